package org.holewise.running;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.Drafts;
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
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Classes in the midst of their sessions: every student has a card and a place at a bench, and each
 * bench has the exercise's checked build as its draft.
 */
public record LabHour(List<Seat> seats) {

  private static final String EXERCISE = "stage-moonlight";
  private static final LocalDate DAY = LocalDate.of(2031, 3, 4);

  /** A student's place. */
  public record Seat(Person student, String card, LabSession session, Bench bench) {}

  /** How many of what; the students of a class go round its benches. */
  public record Size(int classes, int students, int benches) {}

  public static LabHour begun(RunningSchool school, Size size) {
    var seats = new ArrayList<Seat>();
    school
        .part(TransactionTemplate.class)
        .executeWithoutResult(all -> new Beginning(school, size, seats).begin());
    return new LabHour(List.copyOf(seats));
  }

  private record Beginning(RunningSchool school, Size size, List<Seat> seats) {

    void begin() {
      // As if the first administrator had been here.
      school
          .part(JdbcClient.class)
          .sql("update installation set set_up_at = current_timestamp")
          .update();
      var teacher = school.part(People.class).addWithoutPassword("Orla Fennimore", Role.TEACHER);
      for (int i = 1; i <= size.classes(); i++) {
        begin(teacher, school.part(Classes.class).add("Lanterns " + i));
      }
    }

    private void begin(Person teacher, ClassGroup group) {
      var entry = school.part(Library.class).find(EXERCISE).orElseThrow();
      var version = school.part(ExerciseVersions.class).of(entry);
      var sessions = school.part(LabSessions.class);
      var plan = new Plan(group, version, DAY, size.benches(), HintStep.PLACE, false);
      long id = sessions.plan(teacher, plan).id();
      sessions.open(teacher, id);
      var session = sessions.find(id).orElseThrow();
      var students = new ArrayList<Person>();
      for (int i = 0; i < size.students(); i++) {
        var student = school.part(Classes.class).addStudent(group, "Wren " + (i + 1));
        school.part(Benches.class).join(session, i % size.benches() + 1, student);
        students.add(student);
      }
      seat(session, students);
      for (Bench bench : school.part(Benches.class).of(session)) {
        school.part(Drafts.class).save(bench.members().get(0), bench, checked(entry));
      }
    }

    private void seat(LabSession session, List<Person> students) {
      var benches = school.part(Benches.class).of(session);
      for (Person student : students) {
        var bench = benches.stream().filter(b -> b.has(student)).findFirst().orElseThrow();
        seats.add(new Seat(student, school.part(Cards.class).make(student), session, bench));
      }
    }
  }

  /** An exercise's checked build as entries of a draft. */
  private static List<Change> checked(LibraryExercise entry) {
    var lines = BuildLines.write(entry.checked(), entry.exercise()).lines().toList();
    var changes = new ArrayList<Change>();
    for (String line : lines) {
      String[] words = line.split(" ", 2);
      changes.add(new Change(name(words[0], changes.size(), entry.exercise()), words[1], 0));
    }
    return changes;
  }

  private static String name(String word, int number, Exercise exercise) {
    if (word.equals("link") || word.equals("extra")) {
      return word + ":n" + number;
    }
    return (exercise.part(word).isPresent() ? "part:" : "reading:") + word;
  }
}
