package org.holewise.school.handin;

import java.time.LocalDate;
import org.holewise.document.lines.BuildLines;
import org.holewise.running.Office;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;

/** A class of three in an open session with three benches; two of them share the first bench. */
final class LabScene {

  final Office office;
  final Person teacher;
  final Person wren;
  final Person sorrel;
  final Person linden;
  final LibraryExercise entry;
  private final long session;
  private final long bench;

  LabScene(Office office) {
    this.office = office;
    teacher = office.part(People.class).addWithoutPassword("Orla Fennimore", Role.TEACHER);
    var classes = office.part(Classes.class);
    ClassGroup group = classes.add("9 Lanterns");
    wren = classes.addStudent(group, "Wren");
    sorrel = classes.addStudent(group, "Sorrel");
    linden = classes.addStudent(group, "Linden");
    entry = office.part(Library.class).find("stage-moonlight").orElseThrow();
    var version = office.part(ExerciseVersions.class).of(entry);
    var sessions = office.part(LabSessions.class);
    var day = LocalDate.of(2031, 3, 4);
    session = sessions.plan(teacher, new Plan(group, version, day, 3, HintStep.PLACE, false)).id();
    sessions.open(teacher, session);
    var benches = office.part(Benches.class);
    benches.join(session(), 1, wren);
    benches.join(session(), 1, sorrel);
    benches.join(session(), 2, linden);
    bench = benches.of(session()).get(0).id();
  }

  LabSession session() {
    return office.part(LabSessions.class).find(session).orElseThrow();
  }

  Bench bench() {
    return office.part(Benches.class).of(wren, bench).orElseThrow();
  }

  /** The exercise's checked build as typed lines. */
  String soundLines() {
    return BuildLines.write(entry.checked(), entry.exercise()) + "\n";
  }
}
