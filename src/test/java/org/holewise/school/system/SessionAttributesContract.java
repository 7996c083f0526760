package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.transaction.support.TransactionTemplate;

/** What two requests of one browser may bring to its session at once, on every database. */
abstract class SessionAttributesContract {

  private static final String TOKEN = "token";

  private final JdbcIndexedSessionRepository sessions;

  SessionAttributesContract(Store store) {
    DataSource data = store.empty();
    Flyway.configure().dataSource(data).locations("classpath:db/common").load().migrate();
    var transactions = new TransactionTemplate(new JdbcTransactionManager(data));
    sessions = new JdbcIndexedSessionRepository(new JdbcTemplate(data), transactions);
    new SessionAttributes().writtenOnce(data).customize(sessions);
  }

  @Test
  void takesTheLaterOfTwoThatAreNewAtOnce() {
    assertThat(broughtByTwo(sessions)).isEqualTo("second");
  }

  @Test
  void leavesOutWhatCameToASessionThatHasEnded() {
    assertThat(broughtAfterTheEnd(sessions)).isFalse();
  }

  private static <S extends Session> String broughtByTwo(SessionRepository<S> sessions) {
    S begun = sessions.createSession();
    sessions.save(begun);
    S first = sessions.findById(begun.getId());
    S second = sessions.findById(begun.getId());
    first.setAttribute(TOKEN, "first");
    second.setAttribute(TOKEN, "second");
    sessions.save(first);
    sessions.save(second);
    return sessions.findById(begun.getId()).getRequiredAttribute(TOKEN);
  }

  private static <S extends Session> boolean broughtAfterTheEnd(SessionRepository<S> sessions) {
    S begun = sessions.createSession();
    sessions.save(begun);
    S late = sessions.findById(begun.getId());
    late.setAttribute(TOKEN, "late");
    sessions.deleteById(begun.getId());
    sessions.save(late);
    return sessions.findById(begun.getId()) != null;
  }
}
