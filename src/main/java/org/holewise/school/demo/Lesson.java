package org.holewise.school.demo;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.Looks;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The lessons of the demo's class: one last week, one now, and those of the days to come. */
@Component
@Profile("demo")
class Lesson {

  /** The bench that a visitor comes to as a student. */
  static final int OF_THE_VISITOR = 3;

  private static final int BENCHES = 8;

  /** The last bench stays empty. */
  private static final int TAKEN = BENCHES - 1;

  private static final Duration WEEK = Duration.ofDays(7);

  private static final List<List<String>> TO_COME =
      List.of(
          List.of("stage-dimmer"),
          List.of("stage-bridge", "stage-twilight"),
          List.of("stage-reference", "stage-curtain"),
          List.of("stage-hiss", "stage-intercom"),
          List.of("stage-voices", "stage-pulse"),
          List.of("stage-chase"));

  private final DemoClock clock;
  private final Library library;
  private final ExerciseVersions versions;
  private final LabSessions sessions;
  private final Benches benches;
  private final BenchWork work;
  private final Looks looks;
  private final HandIns handIns;
  private final Confirmations confirmations;

  Lesson(
      DemoClock clock,
      Library library,
      ExerciseVersions versions,
      LabSessions sessions,
      Benches benches,
      BenchWork work,
      Looks looks,
      HandIns handIns,
      Confirmations confirmations) {
    this.clock = clock;
    this.library = library;
    this.versions = versions;
    this.sessions = sessions;
    this.benches = benches;
    this.work = work;
    this.looks = looks;
    this.handIns = handIns;
    this.confirmations = confirmations;
  }

  /** All is handed in, marked and shown to the students. */
  void lastWeek(Person teacher, ClassGroup group, List<Person> students) {
    var builds = builds("stage-moonlight");
    var session = opened(WEEK, teacher, plan(group, builds, WEEK, false), students, TAKEN);
    var slips = List.of("loose-lead", "turned-lamp");
    for (int number = 1; number <= TAKEN; number++) {
      Bench bench = work.bench(session, number);
      Duration begun = WEEK.minusMinutes(20 + number);
      if (number <= slips.size()) {
        List<String> slip = builds.named(slips.get(number - 1));
        clock.ago(begun, () -> build(session, bench, slip));
      }
      if (number != slips.size()) {
        clock.ago(begun.minusMinutes(12), () -> build(session, bench, builds.sound()));
      }
    }
    var first = handIns.find(work.bench(session, 1), 1).orElseThrow();
    clock.ago(
        WEEK.minusMinutes(50),
        () -> confirmations.add(teacher, session, first, "open-contact", "R1.1", ""));
    clock.ago(WEEK.minusMinutes(60), () -> end(teacher, session));
  }

  /** Closes a session and shows the students what came out. */
  void end(Person teacher, LabSession session) {
    sessions.close(teacher, session.id());
    sessions.release(teacher, session.id());
  }

  /** Every bench stands somewhere else. */
  void now(Person teacher, ClassGroup group, List<Person> students) {
    var builds = builds("stage-cue");
    var session =
        opened(minutes(34), teacher, plan(group, builds, Duration.ZERO, true), students, TAKEN);
    var columnOff = builds.named("column-off");
    var bench1 = work.bench(session, 1);
    var bench2 = work.bench(session, 2);
    var bench3 = work.bench(session, OF_THE_VISITOR);
    var bench4 = work.bench(session, 4);
    var bench5 = work.bench(session, 5);
    var bench6 = work.bench(session, 6);
    var bench7 = work.bench(session, 7);
    clock.ago(minutes(22), () -> switchOn(teacher, session, bench6, builds.layout(columnOff)));
    clock.ago(minutes(18), () -> build(session, bench6, columnOff));
    clock.ago(minutes(17), () -> switchOn(teacher, session, bench1, builds.layout(builds.sound())));
    clock.ago(minutes(13), () -> build(session, bench6, measuredAgain(columnOff)));
    clock.ago(minutes(12), () -> switchOn(teacher, session, bench5, bareWires(builds)));
    clock.ago(minutes(9), () -> work.type(session, bench7, builds.sound().subList(0, 4)));
    clock.ago(minutes(8), () -> build(session, bench1, builds.sound()));
    clock.ago(minutes(7), () -> work.callForHelp(bench7));
    clock.ago(minutes(6), () -> build(session, bench5, builds.named("bare-wires")));
    clock.ago(minutes(5), () -> switchOn(teacher, session, bench3, builds.layout(columnOff)));
    clock.ago(minutes(4), () -> build(session, bench6, columnOff));
    clock.ago(minutes(3), () -> ask(session, bench2, builds.withLink("link +a25 -a25")));
    clock.ago(minutes(2), () -> ask(session, bench4, builds.layout(builds.sound())));
    clock.ago(minutes(1), () -> work.type(session, bench3, columnOff));
  }

  /** What the class builds from tomorrow on, a day each, easiest first. */
  void toCome(Person teacher, ClassGroup group) {
    for (int day = 1; day <= TO_COME.size(); day++) {
      for (String slug : TO_COME.get(day - 1)) {
        sessions.plan(teacher, plan(group, builds(slug), Duration.ofDays(-day), true));
      }
    }
  }

  private static List<String> bareWires(Builds builds) {
    return builds.layout(builds.named("bare-wires"));
  }

  // The same fault, with the last digit that a meter shows on another day.
  private static List<String> measuredAgain(List<String> lines) {
    return lines.stream().map(line -> line.replace("6.05 V", "6.04 V")).toList();
  }

  /** Types a build and hands it in. */
  void build(LabSession session, Bench bench, List<String> lines) {
    work.type(session, bench, lines);
    work.handIn(session, bench);
  }

  private void ask(LabSession session, Bench bench, List<String> layout) {
    work.type(session, bench, layout);
    work.ask(session, bench);
  }

  private void switchOn(Person teacher, LabSession session, Bench bench, List<String> layout) {
    ask(session, bench, layout);
    looks.add(teacher, bench, "");
  }

  private Builds builds(String slug) {
    return new Builds(library.find(slug).orElseThrow());
  }

  Plan plan(ClassGroup group, Builds builds, Duration ago, boolean lookFirst) {
    var day = LocalDate.ofInstant(clock.instant().minus(ago), clock.getZone());
    var version = versions.of(builds.entry());
    return new Plan(group, version, day, BENCHES, HintStep.PLACE, lookFirst);
  }

  /** A session open since then, its students spread over the first benches. */
  LabSession opened(Duration ago, Person teacher, Plan plan, List<Person> students, int taken) {
    long[] id = new long[1];
    clock.ago(
        ago,
        () -> {
          var session = sessions.plan(teacher, plan);
          id[0] = session.id();
          sessions.open(teacher, session.id());
          for (int i = 0; i < students.size(); i++) {
            benches.join(session, i % taken + 1, students.get(i));
          }
        });
    return sessions.find(id[0]).orElseThrow();
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
