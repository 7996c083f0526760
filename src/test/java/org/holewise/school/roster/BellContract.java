package org.holewise.school.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A whole year group comes in at one bell, and some of them mistype, on every database. */
abstract class BellContract {

  private static final int STUDENTS = 600;

  /** Of so many, one mistypes first. */
  private static final int ONE_IN = 20;

  private static final int AT_ONCE = 32;

  /** In the first minute of a lesson nobody waits for the door. */
  private static final Duration SOON = Duration.ofSeconds(20);

  abstract RunningSchool start(Path data);

  @Test
  @Timeout(120)
  void letsAYearGroupInWithinTwentySeconds(@TempDir Path data)
      throws InterruptedException, ExecutionException {
    try (var school = start(data)) {
      var codes = cards(school);
      var pool = Executors.newFixedThreadPool(AT_ONCE);
      try {
        long begun = System.nanoTime();
        var answers = pool.invokeAll(visits(school, codes));
        Duration taken = Duration.ofNanos(System.nanoTime() - begun);
        for (Future<String> answer : answers) {
          assertThat(answer.get()).isEqualTo("/today");
        }
        assertThat(taken).isLessThan(SOON);
      } finally {
        pool.shutdownNow();
      }
    }
  }

  private static List<Callable<String>> visits(RunningSchool school, List<String> codes) {
    var visits = new ArrayList<Callable<String>>();
    for (int i = 0; i < codes.size(); i++) {
      String code = codes.get(i);
      boolean mistypes = i % ONE_IN == 0;
      visits.add(() -> visit(new Visitor(school), code, mistypes));
    }
    return visits;
  }

  private static String visit(Visitor visitor, String code, boolean mistypes) {
    if (mistypes) {
      var page = visitor.sends("/card", "/card", "code", code.substring(1));
      assertThat(page.body()).contains("No card has this code");
    }
    return Visitor.target(visitor.sends("/card", "/card", "code", code));
  }

  private static List<String> cards(RunningSchool school) {
    var teacher = school.part(People.class).addWithoutPassword("Tom", Role.TEACHER);
    var classes = school.part(Classes.class);
    var group = classes.add("year 9");
    var entry = school.part(Library.class).exercises().get(0);
    var version = school.part(ExerciseVersions.class).of(entry);
    var day = LocalDate.of(2031, 3, 4);
    var sessions = school.part(LabSessions.class);
    var session = sessions.plan(teacher, new Plan(group, version, day, 2, HintStep.PART, false));
    sessions.open(teacher, session.id());
    return IntStream.rangeClosed(1, STUDENTS)
        .mapToObj(i -> classes.addStudent(group, "Student " + i))
        .map(student -> school.part(Cards.class).make(student))
        .toList();
  }
}
