package org.holewise.school.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.Looks;
import org.holewise.school.handin.MarkRow;
import org.holewise.school.handin.Marks;
import org.holewise.school.handin.Power;
import org.holewise.school.handin.SchoolPriors;
import org.holewise.school.library.Library;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSession.State;
import org.holewise.school.session.LabSessions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What a visitor of a new demo finds: lessons before, now and to come. */
class DemoScenesIT {

  private static RunningSchool school;

  @BeforeAll
  static void start(@TempDir Path data) {
    school = RunningSchool.demo(data);
  }

  @AfterAll
  static void stop() {
    school.close();
  }

  @Test
  void thereIsALessonNowOneLastWeekAndEveryOtherExerciseToCome() {
    assertThat(of(State.OPEN)).hasSize(1);
    assertThat(last().released()).isPresent();
    assertThat(last().plannedFor()).isEqualTo(now().plannedFor().minusDays(7));
    assertThat(ago(now().opened().orElseThrow())).isBetween(minutes(34), minutes(40));
    assertThat(of(State.PLANNED))
        .extracting(session -> session.exercise().slug())
        .doesNotHaveDuplicates()
        .hasSize(school.part(Library.class).exercises().size() - 2);
    assertThat(of(State.PLANNED))
        .extracting(LabSession::plannedFor)
        .allMatch(day -> day.isAfter(now().plannedFor()))
        .allMatch(day -> day.isBefore(now().plannedFor().plusDays(7)));
  }

  @Test
  void theBenchesOfNowStandEachSomewhereElse() {
    assertThat(power(1)).isEqualTo(Power.ON);
    assertThat(marks(now(), 1)).satisfiesExactly(DemoScenesIT::isWhole);
    assertThat(power(2)).isEqualTo(Power.STOPPED);
    assertThat(power(4)).isEqualTo(Power.WAITS_FOR_TEACHER);
    assertThat(marks(now(), 5)).satisfiesExactly(DemoScenesIT::lacksSomething);
    assertThat(marks(now(), 6)).hasSize(3).allSatisfy(DemoScenesIT::lacksSomething);
    assertThat(power(7)).isEqualTo(Power.NOT_ASKED);
    var since = school.part(HelpCalls.class).waitsSince(bench(now(), 7)).orElseThrow();
    assertThat(ago(since)).isBetween(minutes(7), minutes(12));
    assertThat(bench(now(), 8).members()).isEmpty();
    assertThat(school.part(Drafts.class).of(bench(now(), 8))).isEmpty();
  }

  @Test
  void theVisitorsBenchIsOnWithReadingsTakenAndNothingHandedIn() {
    var bench = bench(now(), Lesson.OF_THE_VISITOR);
    assertThat(bench.has(school.part(DemoPeople.class).of(Role.STUDENT))).isTrue();
    assertThat(power(Lesson.OF_THE_VISITOR)).isEqualTo(Power.ON);
    assertThat(draft(bench).problems()).isEmpty();
    assertThat(draft(bench).record().readings()).isNotEmpty();
    assertThat(handIns(bench)).isEmpty();
  }

  @Test
  void everythingOfLastWeekIsMarkedAndOneBenchNeverFoundItsSlip() {
    var last = last();
    for (int number = 1; number <= 7; number++) {
      var marks = marks(last, number);
      assertThat(marks)
          .isNotEmpty()
          .allSatisfy(
              mark -> assertThat(ago(mark.at())).isBetween(Duration.ofDays(6), Duration.ofDays(7)));
      var latest = marks.get(marks.size() - 1);
      assertThat(latest.points().total() == latest.points().of()).isEqualTo(number != 2);
    }
    assertThat(marks(last, 1)).hasSize(2);
    assertThat(handIns(bench(last, 8))).isEmpty();
  }

  @Test
  void theOtherClassHadLessonsWhoseFaultsAreKnown() {
    var lessons =
        of(State.CLOSED).stream()
            .filter(session -> !session.group().equals(now().group()))
            .toList();
    assertThat(lessons).hasSize(5).allMatch(session -> session.released().isPresent());
    var confirmations = school.part(Confirmations.class);
    int proven = 0;
    for (LabSession lesson : lessons) {
      for (int number = 1; number <= PastLessons.TAKEN; number++) {
        var all = handIns(bench(lesson, number));
        for (HandIn handIn : all.subList(0, all.size() - 1)) {
          proven += confirmations.of(handIn).orElseThrow().by().isEmpty() ? 1 : 0;
        }
        var marks = marks(lesson, number);
        isWhole(marks.get(marks.size() - 1));
      }
    }
    assertThat(proven).isEqualTo(4);
    assertThat(school.part(SchoolPriors.class).now().name()).isEqualTo("school-42");
  }

  @Test
  void theStoreIsStockedAndTheKitsOfNowAreInTheClass() {
    var db = school.part(JdbcClient.class);
    assertThat(db.sql("select count(*) from stock_items").query(Integer.class).single())
        .isGreaterThan(10);
    var packed =
        db.sql("select quantity from stock_movements where to_place = 'CLASS' and lab_session = ?");
    assertThat(packed.param(now().id()).query(Integer.class).list())
        .isNotEmpty()
        .allSatisfy(quantity -> assertThat(quantity).isPositive());
  }

  private static void isWhole(MarkRow mark) {
    assertThat(mark.points().total()).isEqualTo(mark.points().of());
  }

  private static void lacksSomething(MarkRow mark) {
    assertThat(mark.points().total()).isLessThan(mark.points().of());
  }

  private static List<LabSession> of(State state) {
    return school.part(LabSessions.class).all().stream()
        .filter(session -> session.state() == state)
        .toList();
  }

  private static LabSession now() {
    return of(State.OPEN).get(0);
  }

  private static LabSession last() {
    return of(State.CLOSED).stream()
        .filter(session -> session.group().equals(now().group()))
        .reduce((one, other) -> Assertions.fail("two past lessons of the class"))
        .orElseThrow();
  }

  private static Bench bench(LabSession session, int number) {
    return school.part(Benches.class).of(session).get(number - 1);
  }

  private static Draft draft(Bench bench) {
    return Draft.of(school.part(Drafts.class).of(bench), now().exercise());
  }

  private static Power power(int number) {
    var bench = bench(now(), number);
    var asked = school.part(GateChecks.class).latest(bench);
    var looked = school.part(Looks.class).latest(bench);
    return Power.of(now(), draft(bench).layout(), asked, looked);
  }

  private static List<HandIn> handIns(Bench bench) {
    return school.part(HandIns.class).of(bench);
  }

  private static List<MarkRow> marks(LabSession session, int number) {
    var marks = school.part(Marks.class);
    return handIns(bench(session, number)).stream()
        .map(handIn -> marks.latest(handIn).orElseThrow())
        .toList();
  }

  private static Duration ago(Instant time) {
    return Duration.between(time, school.part(Clock.class).instant());
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
