package org.holewise.school.system;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.holewise.school.account.Person;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The demo's class, in the midst of a session at its benches. */
@Component
@Profile("demo")
class DemoClass {

  private static final String NAME = "9b";

  private static final List<String> STUDENTS =
      List.of(
          "Wren", "Sorrel", "Hazel", "Rowan", "Linden", "Bryony", "Alder", "Clover", "Tansy",
          "Aspen", "Fern", "Heron", "Juniper", "Lark", "Maple", "Myrtle", "Poppy", "Robin",
          "Saffron", "Teasel");

  private static final int BENCHES = 8;

  /** The last bench is empty. */
  private static final int TAKEN = BENCHES - 1;

  private static final int OF_THE_STUDENT = 3;

  private final Classes classes;
  private final Library library;
  private final ExerciseVersions versions;
  private final LabSessions sessions;
  private final Benches benches;
  private final Clock clock;

  DemoClass(
      Classes classes,
      Library library,
      ExerciseVersions versions,
      LabSessions sessions,
      Benches benches,
      Clock clock) {
    this.classes = classes;
    this.library = library;
    this.versions = versions;
    this.sessions = sessions;
    this.benches = benches;
    this.clock = clock;
  }

  /** Makes all of it, or nothing where it is there. */
  @Transactional
  void lay(Person teacher) {
    if (!classes.all().isEmpty()) {
      return;
    }
    ClassGroup group = classes.add(NAME);
    var students = STUDENTS.stream().map(name -> classes.addStudent(group, name)).toList();
    var version = versions.of(library.find("stage-moonlight").orElseThrow());
    var today = LocalDate.now(clock);
    var session =
        sessions.plan(teacher, new Plan(group, version, today, BENCHES, HintStep.PLACE, true));
    sessions.open(teacher, session.id());
    for (int i = 0; i < students.size(); i++) {
      benches.join(session, i % TAKEN + 1, students.get(i));
    }
  }

  /** The student that a visitor becomes: somebody at the third bench of an open session. */
  Person student() {
    var all = sessions.all();
    return Stream.concat(all.stream().filter(LabSession::isOpen), all.stream())
        .flatMap(session -> benches.of(session).stream())
        .filter(bench -> bench.number() == OF_THE_STUDENT)
        .flatMap(bench -> bench.members().stream())
        .findFirst()
        .or(() -> classes.all().stream().flatMap(g -> classes.students(g).stream()).findFirst())
        .orElseThrow(() -> new IllegalStateException("the demo has no student"));
  }
}
