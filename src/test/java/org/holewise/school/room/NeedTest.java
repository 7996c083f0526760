package org.holewise.school.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.marking.Points;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Fault;
import org.holewise.school.handin.Power;
import org.holewise.school.room.BenchProgress.Filled;
import org.holewise.school.room.BenchProgress.Times;
import org.holewise.school.room.Need.Kind;
import org.holewise.school.session.Bench;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who needs the teacher, and why. Times are minutes before now. */
@Tag("fast")
class NeedTest {

  private static final Instant NOW = Instant.parse("2031-03-04T10:00:00Z");
  private static final Person WREN = new Person(1, "Wren", Role.STUDENT);
  private static final Optional<Fault> COLUMN = Optional.of(new Fault("column-off", "R1.2"));
  private static final Optional<Fault> OTHER_COLUMN = Optional.of(new Fault("column-off", "D1.a"));

  @Nested
  class TheReasons {

    /** Times are minutes ago; empty is never. */
    @ParameterizedTest
    @CsvSource(
        nullValues = "-",
        value = {
          "-, NOT_ASKED, -,  -, 1,  AT_WORK,              1",
          "3, NOT_ASKED, -,  -, 1,  HELP,                 3",
          "-, WAITS_FOR_TEACHER, 4, -, 1, LOOK_FIRST,     4",
          "-, STOPPED, 5,    -, 1,  STOPPED,              5",
          "-, CHANGED, 5,    -, 1,  AT_WORK,              1",
          "-, ON, 5,         -, 1,  AT_WORK,              1",
          "-, NOT_ASKED, -,  -, 9,  AT_WORK,              9",
          "-, NOT_ASKED, -,  -, 10, STUCK,               10",
          "-, NOT_ASKED, -,  9, 30, AT_WORK,             30",
          "-, NOT_ASKED, -, 10, 30, STUCK,               10",
          "2, WAITS_FOR_TEACHER, 4, -, 12, HELP LOOK_FIRST STUCK, 2",
          "-, STOPPED, 15,   -, 15, STOPPED STUCK,       15"
        })
    void areSaidTheStrongestFirst(
        Integer calls,
        Power power,
        Integer asked,
        Integer looked,
        Integer worked,
        String kinds,
        int since) {
      var times = new Times(ago(calls), ago(asked), ago(looked), ago(worked));
      Need need = Need.of(bench(1, power, times, List.of()), true, NOW);
      assertThat(kinds(need)).containsExactlyElementsOf(kindsOf(kinds));
      assertThat(need.first().since()).contains(NOW.minus(Duration.ofMinutes(since)));
    }

    @Test
    void areMissingWhereNobodySits() {
      var empty =
          new BenchProgress(
              new Bench(1, 1, 1, List.of()),
              new Filled(0, 4, 0, 6),
              Power.NOT_ASKED,
              none(),
              List.of());
      assertThat(kinds(Need.of(empty, true, NOW))).containsExactly(Kind.EMPTY);
    }
  }

  @Nested
  class TheSameFault {

    @Test
    void countsFromThreeHandInsInARow() {
      var two = handedIn(faults(COLUMN, COLUMN), 3);
      var three = handedIn(faults(COLUMN, COLUMN, COLUMN), 3);
      assertThat(kinds(Need.of(two, true, NOW))).containsExactly(Kind.AT_WORK);
      assertThat(kinds(Need.of(three, true, NOW))).containsExactly(Kind.SAME_FAULT);
      assertThat(three.repeats()).isEqualTo(3);
    }

    @Test
    void beganWithTheFirstOfThem() {
      var need = Need.of(handedIn(faults(OTHER_COLUMN, COLUMN, COLUMN, COLUMN), 3), true, NOW);
      assertThat(need.first().since()).contains(NOW.minus(Duration.ofMinutes(5)));
    }

    @Test
    void isBrokenByAnotherPlaceAnotherKindOrNone() {
      for (var between :
          List.of(
              OTHER_COLUMN,
              Optional.of(new Fault("open-contact", "R1.2")),
              Optional.<Fault>empty())) {
        var bench = handedIn(faults(COLUMN, COLUMN, between, COLUMN), 3);
        assertThat(kinds(Need.of(bench, true, NOW))).containsExactly(Kind.AT_WORK);
      }
    }

    @Test
    void isAnsweredByALookAfterTheLast() {
      var attempts = handedIn(faults(COLUMN, COLUMN, COLUMN), 3).attempts();
      var before = bench(1, Power.ON, new Times(ago(null), ago(null), ago(4), ago(3)), attempts);
      var after = bench(1, Power.ON, new Times(ago(null), ago(null), ago(2), ago(3)), attempts);
      assertThat(kinds(Need.of(before, true, NOW))).containsExactly(Kind.SAME_FAULT);
      assertThat(kinds(Need.of(after, true, NOW))).containsExactly(Kind.AT_WORK);
    }
  }

  @Nested
  class AMark {

    @Test
    void ofAllPointsIsFinishedHoweverLongAgo() {
      var need = Need.of(marked(result(60, 40, false, "")), true, NOW);
      assertThat(kinds(need)).containsExactly(Kind.FINISHED);
    }

    @Test
    void ofAllPointsNeedsNoLookFirst() {
      var bench =
          new BenchProgress(
              new Bench(1, 1, 1, List.of(WREN)),
              new Filled(4, 4, 6, 6),
              Power.WAITS_FOR_TEACHER,
              none(),
              List.of(attempt(1, 20, Optional.of(result(60, 40, false, "")))));
      assertThat(kinds(Need.of(bench, true, NOW))).containsExactly(Kind.FINISHED);
    }

    @Test
    void thatIsHeldWaitsUntilATeacherOverrules() {
      var held = result(60, 40, true, "");
      var own = Optional.of(new Result.Own(50, 40, "Seen at the bench."));
      var settled = new Result(held.points(), held.fault(), "", own);
      assertThat(kinds(Need.of(marked(held), true, NOW))).containsExactly(Kind.STUCK, Kind.HELD);
      assertThat(kinds(Need.of(marked(settled), true, NOW))).containsExactly(Kind.FINISHED);
    }

    @Test
    void withACautionSaysSo() {
      var need = Need.of(marked(result(30, 40, false, "supply-shorted")), true, NOW);
      assertThat(kinds(need)).containsExactly(Kind.STUCK, Kind.CAUTION);
    }

    @Test
    void isAllThatIsLeftOfAClosedSession() {
      var held = Need.of(marked(result(60, 40, true, "supply-shorted")), false, NOW);
      var wrong = Need.of(marked(result(30, 40, false, "supply-shorted")), false, NOW);
      assertThat(kinds(held)).containsExactly(Kind.HELD);
      assertThat(kinds(wrong)).containsExactly(Kind.AT_WORK);
    }
  }

  @Test
  void theOrderIsByReasonThenTimeThenNumber() {
    var order =
        List.of(
            bench(9, Power.ON, new Times(ago(8), ago(null), ago(null), ago(1)), List.of()),
            bench(1, Power.ON, new Times(ago(2), ago(null), ago(null), ago(1)), List.of()),
            bench(8, Power.WAITS_FOR_TEACHER, asked(3), List.of()),
            bench(3, Power.STOPPED, asked(3), List.of()),
            bench(4, Power.STOPPED, asked(3), List.of()),
            bench(7, Power.ON, new Times(ago(null), ago(null), ago(null), ago(40)), List.of()),
            bench(2, Power.ON, new Times(ago(null), ago(null), ago(null), ago(2)), List.of()));
    var mixed = new ArrayList<>(order);
    Collections.reverse(mixed);
    mixed.sort(
        Comparator.comparing((BenchProgress bench) -> Need.of(bench, true, NOW))
            .thenComparing(bench -> bench.bench().number()));
    assertThat(mixed).containsExactlyElementsOf(order);
  }

  private static Times none() {
    return new Times(Optional.empty(), Optional.empty(), Optional.empty(), ago(20));
  }

  private static Times asked(int minutes) {
    return new Times(Optional.empty(), ago(minutes), Optional.empty(), ago(1));
  }

  private static Optional<Instant> ago(Integer minutes) {
    return Optional.ofNullable(minutes).map(Duration::ofMinutes).map(NOW::minus);
  }

  private static List<Kind> kinds(Need need) {
    return need.reasons().stream().map(Need.Reason::kind).toList();
  }

  private static List<Kind> kindsOf(String names) {
    return Arrays.stream(names.split(" ")).map(Kind::valueOf).toList();
  }

  private static BenchProgress bench(int number, Power power, Times times, List<Attempt> handed) {
    var bench = new Bench(number, 1, number, List.of(WREN));
    return new BenchProgress(bench, new Filled(1, 4, 0, 6), power, times, handed);
  }

  @SafeVarargs
  private static List<Optional<Fault>> faults(Optional<Fault>... faults) {
    return List.of(faults);
  }

  /** A hand-in a minute, the last so many minutes ago. */
  private static BenchProgress handedIn(List<Optional<Fault>> faults, int last) {
    var handed = new ArrayList<Attempt>();
    for (int i = 0; i < faults.size(); i++) {
      var result = new Result(new Points(50, 40, 100, false), faults.get(i), "", Optional.empty());
      handed.add(attempt(i + 1, last + faults.size() - 1 - i, Optional.of(result)));
    }
    return bench(1, Power.ON, new Times(ago(null), ago(null), ago(null), ago(last)), handed);
  }

  private static BenchProgress marked(Result result) {
    return bench(1, Power.ON, none(), List.of(attempt(1, 20, Optional.of(result))));
  }

  private static Result result(int wiring, int readings, boolean held, String caution) {
    return new Result(
        new Points(wiring, readings, 100, held), Optional.empty(), caution, Optional.empty());
  }

  private static Attempt attempt(int number, int minutes, Optional<Result> result) {
    return new Attempt(number, 1, number, NOW.minus(Duration.ofMinutes(minutes)), result);
  }
}
