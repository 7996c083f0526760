package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.util.UUID;
import org.holewise.running.Office;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSessions;
import org.junit.jupiter.api.Test;

/**
 * Nobody who holds a connection waits for a second one: under load each would wait for the others.
 */
class OneConnectionTest {

  @Test
  void isEnoughForAnyRequest() {
    try (var pool = new HikariDataSource()) {
      pool.setJdbcUrl("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
      pool.setMaximumPoolSize(2);
      pool.setMinimumIdle(1);
      pool.setConnectionTimeout(2000);
      try (var office = new Office(() -> pool, MarkingQueue.class, HandInContract.libraryType())) {
        // Migrations take two, and are done.
        pool.getHikariConfigMXBean().setMaximumPoolSize(1);
        pool.getHikariPoolMXBean().softEvictConnections();
        var scene = new LabScene(office);
        var handIns = office.part(HandIns.class);
        String lines = scene.soundLines();
        var request = Request.of("k", lines);
        var kept = handIns.handIn(scene.wren, scene.session(), scene.bench(), request, lines);
        office.part(MarkingQueue.class).now(kept);
        assertThat(office.part(Marks.class).latest(kept)).isPresent();
        assertThat(handIns.of(scene.bench())).containsExactly(kept);
        assertThat(office.part(LabSessions.class).all()).containsExactly(scene.session());
        assertThat(office.part(Benches.class).of(scene.session())).hasSize(3);
      }
    }
  }
}
