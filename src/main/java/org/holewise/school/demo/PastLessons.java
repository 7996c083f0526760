package org.holewise.school.demo;

import java.time.Duration;
import java.util.List;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.HandIns;
import org.holewise.school.library.Library;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * The lessons that another class of the demo had in the weeks before: most benches get a fault out,
 * and the teacher says what it was where the next hand-in does not prove it.
 */
@Component
@Profile("demo")
class PastLessons {

  private static final Duration WEEK = Duration.ofDays(7);

  /** Benches in use; each more makes a demo's first start longer. */
  static final int TAKEN = 5;

  private static final String BY_REPAIR = "";

  private static final List<Week> WEEKS =
      List.of(
          new Week(
              "stage-moonlight",
              new Fault("loose-lead", "open-contact", "S1.1"),
              new Fault("turned-lamp", "reversed", "D1"),
              new Fault("loose-lead", "open-contact", "link 2"),
              new Fault("turned-lamp", "reversed", "D1")),
          new Week(
              "stage-curtain",
              new Fault("column-off", "wrong-hole", "S1.1"),
              new Fault("turned-lamp", "reversed", "D1"),
              new Fault("wrong-part", "wrong-value", "R2"),
              new Fault("column-off", "wrong-hole", "link 1")),
          new Week(
              "stage-dimmer",
              new Fault("no-bridge", BY_REPAIR, ""),
              new Fault("wrong-part", "wrong-value", "R3"),
              new Fault("wrong-part", "wrong-value", "R3"),
              new Fault("no-bridge", BY_REPAIR, "")),
          new Week(
              "stage-twilight",
              new Fault("ends", "swapped-pins", "P1"),
              new Fault("wrong-part", "wrong-value", "R2"),
              new Fault("loose-sensor", "open-contact", "R1.1"),
              new Fault("loose-sensor", "open-contact", "link 1")),
          new Week(
              "stage-reference",
              new Fault("turned-zener", "reversed", "D1"),
              new Fault("column-off", BY_REPAIR, ""),
              new Fault("wrong-part", "wrong-value", "R1"),
              new Fault("column-off", BY_REPAIR, "")));

  private final DemoClock clock;
  private final Library library;
  private final Lesson lessons;
  private final BenchWork work;
  private final HandIns handIns;
  private final Confirmations confirmations;

  PastLessons(
      DemoClock clock,
      Library library,
      Lesson lessons,
      BenchWork work,
      HandIns handIns,
      Confirmations confirmations) {
    this.clock = clock;
    this.library = library;
    this.lessons = lessons;
    this.work = work;
    this.handIns = handIns;
    this.confirmations = confirmations;
  }

  /** What a bench did wrong, by the name of the build with it, and what the teacher found. */
  private record Fault(String build, String kind, String place) {}

  /** An exercise, and the faults of the first benches; the others are sound at once. */
  private record Week(String slug, List<Fault> faults) {
    Week(String slug, Fault... faults) {
      this(slug, List.of(faults));
    }
  }

  void lay(Person teacher, ClassGroup group, List<Person> students) {
    for (int i = 0; i < WEEKS.size(); i++) {
      lay(WEEKS.get(i), WEEK.multipliedBy(WEEKS.size() - i).plusDays(1), teacher, group, students);
    }
  }

  private void lay(
      Week week, Duration ago, Person teacher, ClassGroup group, List<Person> students) {
    var builds = new Builds(library.find(week.slug()).orElseThrow());
    var plan = lessons.plan(group, builds, ago, false);
    var session = lessons.opened(ago, teacher, plan, students, TAKEN);
    for (int number = 1; number <= TAKEN; number++) {
      Bench bench = work.bench(session, number);
      Duration begun = ago.minusMinutes(20 + number);
      if (number <= week.faults().size()) {
        Fault fault = week.faults().get(number - 1);
        clock.ago(begun, () -> lessons.build(session, bench, builds.named(fault.build())));
        clock.ago(begun.minusMinutes(8), () -> say(teacher, session, bench, fault));
      }
      clock.ago(begun.minusMinutes(12), () -> lessons.build(session, bench, builds.sound()));
    }
    clock.ago(ago.minusMinutes(60), () -> lessons.end(teacher, session));
  }

  private void say(Person teacher, LabSession session, Bench bench, Fault fault) {
    if (!fault.kind().equals(BY_REPAIR)) {
      var handIn = handIns.find(bench, 1).orElseThrow();
      confirmations.add(teacher, session, handIn, fault.kind(), fault.place(), "");
    }
  }
}
