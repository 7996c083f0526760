package org.holewise.benchmark;

import static org.awaitility.Awaitility.await;

import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.holewise.benchmark.OpenLoop.Times;
import org.holewise.running.LabHour;
import org.holewise.running.LabHour.Seat;
import org.holewise.running.RunningSchool;
import org.holewise.running.SeparateSchool;
import org.holewise.running.Settings;
import org.holewise.store.Postgres;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.util.FileSystemUtils;

/**
 * A school's busiest minutes: 600 students come in at the bell, thirty a second, then thirty a
 * second hand in for a minute. Beside it, at the same rate and on the same kind of database, the
 * least that keeps a hand-in, so that the figures say something on any machine. Run on the embedded
 * database, and on PostgreSQL where HOLEWISE_TEST_POSTGRES_URL, _USER and _PASSWORD name one.
 */
public final class LoadScript {

  static final LabHour.Size SIZE = new LabHour.Size(20, 30, 15);
  private static final int A_SECOND = 30;
  private static final int HAND_INS = A_SECOND * 60;
  private static final Duration LONGEST_MARKING = Duration.ofMinutes(5);

  private static final Logger log = LoggerFactory.getLogger(LoadScript.class);

  private final String name;
  private final Settings settings;
  private final Settings bare;
  private final List<String> errors = new ArrayList<>();

  private LoadScript(String name, Settings settings, Settings bare) {
    this.name = name;
    this.settings = settings;
    this.bare = bare;
  }

  /** Runs on all databases at hand; ends with 1 where anything failed. */
  public static void main(String[] arguments) throws Exception {
    var folder = Files.createTempDirectory("holewise-load");
    var errors = new ArrayList<>(embedded(folder).run());
    if (System.getenv("HOLEWISE_TEST_POSTGRES_URL") != null) {
      errors.addAll(onServer(folder).run());
    }
    FileSystemUtils.deleteRecursively(folder);
    System.exit(errors.isEmpty() ? 0 : 1);
  }

  private static LoadScript embedded(Path folder) {
    return new LoadScript(
        "H2",
        Settings.embedded(folder.resolve("school")),
        Settings.embedded(folder.resolve("bare")));
  }

  private static LoadScript onServer(Path folder) {
    return new LoadScript(
        "PostgreSQL",
        Settings.on(Postgres.emptyServer(), folder),
        Settings.on(Postgres.emptyServer(), folder));
  }

  private List<String> run() throws Exception {
    try (var loop = new OpenLoop()) {
      Times handIns = handIns(loop, seats());
      log.info("{}: {}", name, MarkLags.in(settings));
      Times inserts = inserts(loop);
      log.info("{}: a hand-in takes {}", name, handIns.over(inserts));
    }
    return errors;
  }

  private List<Seat> seats() {
    try (var school = RunningSchool.on(settings)) {
      return LabHour.begun(school, SIZE).seats();
    }
  }

  private Times handIns(OpenLoop loop, List<Seat> seats) throws Exception {
    var client = HttpClient.newHttpClient();
    try (var school = SeparateSchool.start(settings, List.of("-Xmx1g"))) {
      var pupils = seats.stream().map(seat -> new Pupil(school, seat, client)).toList();
      int all = pupils.size();
      noted("sign-ins", loop.run(all, A_SECOND, i -> pupils.get(i).comesIn()));
      noted("benches opened", loop.run(all, A_SECOND, i -> pupils.get(i).opensBench()));
      var handIns = loop.run(HAND_INS, A_SECOND, i -> pupils.get(i % all).handsIn("key-" + i));
      noted("hand-ins", handIns);
      for (Pupil pupil : pupils) {
        await().atMost(LONGEST_MARKING).until(pupil::isMarked);
      }
      return handIns;
    }
  }

  private Times inserts(OpenLoop loop) throws Exception {
    try (var server = new BareInserts(bare)) {
      return noted("bare inserts", loop.run(HAND_INS, A_SECOND, server::ask));
    }
  }

  private Times noted(String what, Times times) {
    log.info("{}: {} {} a second: {}", name, what, A_SECOND, times);
    errors.addAll(times.errors());
    return times;
  }
}
