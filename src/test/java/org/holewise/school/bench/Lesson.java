package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.holewise.document.lines.BuildLines;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.roster.Cards;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;

/** A new class in an open session of its own, in a school that runs. */
final class Lesson {

  final RunningSchool school;
  final Person teacher;
  final Person wren;
  final Person sorrel;
  final LibraryExercise entry;
  private final ClassGroup group;
  private final long session;

  Lesson(RunningSchool school, HintStep hint, boolean lookFirst) {
    this.school = school;
    String own = UUID.randomUUID().toString().substring(0, 8);
    teacher = school.part(People.class).addWithoutPassword("Orla " + own, Role.TEACHER);
    var classes = school.part(Classes.class);
    group = classes.add("Lanterns " + own);
    wren = classes.addStudent(group, "Wren " + own);
    sorrel = classes.addStudent(group, "Sorrel " + own);
    entry = school.part(Library.class).find("stage-moonlight").orElseThrow();
    var version = school.part(ExerciseVersions.class).of(entry);
    var day = LocalDate.of(2031, 3, 4);
    session = sessions().plan(teacher, new Plan(group, version, day, 3, hint, lookFirst)).id();
    sessions().open(teacher, session);
  }

  LabSessions sessions() {
    return school.part(LabSessions.class);
  }

  LabSession session() {
    return sessions().find(session).orElseThrow();
  }

  Person another(String name) {
    return school.part(Classes.class).addStudent(group, name);
  }

  /** The bench of that number, with the student at it. */
  Bench at(int number, Person student) {
    school.part(Benches.class).join(session(), number, student);
    return school.part(Benches.class).of(session()).get(number - 1);
  }

  /** The student, come in with a card. */
  Visitor in(Person student) {
    var visitor = new Visitor(school);
    String code = school.part(Cards.class).make(student);
    assertThat(Visitor.target(visitor.sends("/card", "/card", "code", code))).isEqualTo("/today");
    return visitor;
  }

  List<DraftEntry> draft(Bench bench) {
    return school.part(Drafts.class).of(bench);
  }

  List<HandIn> handIns(Bench bench) {
    return school.part(HandIns.class).of(bench);
  }

  /** The exercise's checked build as typed lines. */
  String soundLines() {
    return BuildLines.write(entry.checked(), entry.exercise());
  }
}
