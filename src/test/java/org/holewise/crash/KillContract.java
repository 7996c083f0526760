package org.holewise.crash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.holewise.crash.Ledger.Key;
import org.holewise.running.LabHour;
import org.holewise.running.LabHour.Seat;
import org.holewise.running.RunningSchool;
import org.holewise.running.SeparateSchool;
import org.holewise.running.Settings;
import org.holewise.running.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Twenty students write while the process is killed, again and again: what they were told is kept
 * is there afterwards, what they were not told and send again is there once, everything is marked,
 * and nobody has to sign in again.
 */
abstract class KillContract {

  private static final LabHour.Size SIZE = new LabHour.Size(2, 10, 4);
  private static final int SHORTEST_WRITING_MILLIS = 500;
  private static final int LONGEST_WRITING_MILLIS = 2000;
  private static final Duration LONGEST_MARKING = Duration.ofSeconds(60);
  private static final long SEED = 20310304;

  /** What the members of a bench write, each a reading of their own. */
  private static final List<Entry> ENTRIES =
      List.of(
          new Entry("reading:supply", List.of("4.99 V", "5.00 V", "5.02 V")),
          new Entry("reading:across-r1", List.of("1.85 V", "1.86 V", "1.87 V")),
          new Entry("reading:across-moon", List.of("3.14 V", "3.15 V", "3.16 V")));

  @TempDir private Path folder;

  private final Ledger ledger = new Ledger();
  private final List<Writer> writers = new ArrayList<>();
  private final Random random = new Random(SEED);
  private Settings settings;
  private Site site;

  record Entry(String name, List<String> texts) {}

  /** Where the data are. */
  abstract Settings settings(Path folder);

  /** What the data hold while no process has them open. */
  abstract Kept kept(Path folder);

  abstract int kills();

  @BeforeEach
  void begin() {
    settings = settings(folder);
    try (var school = RunningSchool.on(settings)) {
      var places = new ArrayList<Long>();
      for (Seat seat : LabHour.begun(school, SIZE).seats()) {
        long bench = seat.bench().id();
        int before = (int) places.stream().filter(place -> place == bench).count();
        places.add(bench);
        writers.add(new Writer(this::at, seat, ENTRIES.get(before), ledger, places.size()));
      }
    }
  }

  @Test
  void losesNothingThatWasAcknowledged() throws Exception {
    long open = 0;
    int unmarked = 0;
    for (int kill = 1; kill <= kills(); kill++) {
      killWhileTheyWrite(kill == 1 ? Writer::comesIn : Writer::comesBack);
      var kept = kept(folder);
      assertThat(ledger.wrongWith(kept)).as("after kill %d", kill).isEmpty();
      open += ledger.open();
      unmarked += kept.unmarked();
    }
    // Without these the kills came when nothing was at stake.
    assertThat(ledger.savesToldOf()).isGreaterThan(kills() * (long) writers.size());
    assertThat(ledger.handInsToldOf()).isGreaterThan(kills());
    assertThat(open).isGreaterThan(kills());
    assertThat(unmarked).isPositive();
    endsInOrder();
  }

  private void killWhileTheyWrite(Consumer<Writer> comes) throws Exception {
    var school = SeparateSchool.start(settings, SeparateSchool.QUICK_START);
    site = school;
    all(comes.andThen(Writer::repeats));
    var threads = Executors.newFixedThreadPool(writers.size());
    var writing = writers.stream().map(writer -> threads.submit(writer::writes)).toList();
    threads.shutdown();
    threads.awaitTermination(
        random.nextInt(SHORTEST_WRITING_MILLIS, LONGEST_WRITING_MILLIS), TimeUnit.MILLISECONDS);
    school.kill();
    for (Future<?> each : writing) {
      each.get(1, TimeUnit.MINUTES);
    }
  }

  private void endsInOrder() throws Exception {
    try (var school = RunningSchool.on(settings)) {
      site = school;
      all(Writer::comesBack);
      all(Writer::repeats);
      assertThat(ledger.open()).isZero();
      var data = school.part(JdbcClient.class);
      await().atMost(LONGEST_MARKING).until(() -> Kept.in(data).unmarked() == 0);
      assertThat(ledger.wrongWith(Kept.in(data))).isEmpty();
      var never = new Key(1, "never sent");
      ledger.acknowledged(never);
      assertThat(ledger.wrongWith(Kept.in(data))).containsExactly(never + " is there 0 times");
    }
  }

  private java.net.URI at(String path) {
    return site.at(path);
  }

  private void all(Consumer<Writer> act) throws Exception {
    var threads = Executors.newFixedThreadPool(writers.size());
    try {
      var done = writers.stream().map(w -> threads.submit(() -> act.accept(w))).toList();
      for (Future<?> each : done) {
        each.get(1, TimeUnit.MINUTES);
      }
    } finally {
      threads.shutdown();
    }
  }
}
