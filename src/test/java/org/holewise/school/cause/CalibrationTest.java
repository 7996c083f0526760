package org.holewise.school.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What was said against what was so, and how often the place was named. */
@Tag("fast")
class CalibrationTest {

  private static KnownCause cause(double said, boolean wasSo) {
    return new KnownCause(
        "touching", false, Optional.of(wasSo ? 1 : 0), Optional.of(said), Optional.of(wasSo));
  }

  private static KnownCause at(String kind, int pointed) {
    return new KnownCause(
        kind, true, Optional.of(pointed), Optional.of(0.5), Optional.of(pointed == 1));
  }

  private static KnownCause unjudged(String kind) {
    return new KnownCause(kind, false, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Said 0.00, 0.01 and so on, each second one so. */
  private static List<KnownCause> rising(int count) {
    return IntStream.range(0, count).mapToObj(i -> cause(i / 100.0, i % 2 == 0)).toList();
  }

  @Nested
  class Bins {

    @Test
    void areOfEqualCountWhateverTheOrder() {
      var shuffled = new ArrayList<>(rising(62));
      Collections.shuffle(shuffled, new Random(7));
      var bins = Bin.of(shuffled);
      assertThat(bins).isEqualTo(Bin.of(rising(62))).hasSize(6);
      assertThat(bins).extracting(Bin::count).containsOnly(10, 11);
      assertThat(bins.stream().mapToInt(Bin::count).sum()).isEqualTo(62);
      assertThat(bins).isSortedAccordingTo((a, b) -> Double.compare(a.said(), b.said()));
      assertThat(bins.get(0).said()).isCloseTo(0.045, within(1e-9));
      assertThat(bins.get(0).so()).isEqualTo(5);
    }

    @Test
    void areNoneWhereThereAreTooFew() {
      assertThat(Bin.of(rising(Bin.FEWEST - 1))).isEmpty();
      assertThat(Bin.of(rising(Bin.FEWEST))).hasSize(4);
    }

    @Test
    void leaveOutWhatCannotBeJudged() {
      var mixed = new ArrayList<>(rising(Bin.FEWEST - 1));
      mixed.add(unjudged("none"));
      assertThat(Bin.of(mixed)).isEmpty();
    }
  }

  /**
   * R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in
   * Medicine 17 (1998) 857–872, table I, method 3.
   */
  @Nested
  class RangesOfARate {

    @Test
    void areThePublishedOnes() {
      assertRange(81, 263, 0.2553, 0.3662);
      assertRange(15, 148, 0.0624, 0.1605);
      assertRange(0, 20, 0.0000, 0.1611);
      assertRange(1, 29, 0.0061, 0.1718);
    }

    private void assertRange(int so, int count, double low, double high) {
      var bin = new Bin(count, 0.5, so);
      assertThat(bin.low()).isCloseTo(low, within(5e-5));
      assertThat(bin.high()).isCloseTo(high, within(5e-5));
    }
  }

  @Nested
  class ThePlot {

    @Test
    void hasItsPointsInsideAndOnTheDiagonalWhereSaidIsSo() {
      var fair = new Bin(10, 0.4, 4);
      var point = Plot.of(List.of(fair)).points().get(0);
      assertThat(point.x() - Plot.LEFT).isCloseTo(0.4 * Plot.SIDE, within(0.1));
      assertThat(Plot.TOP + Plot.SIDE - point.y()).isCloseTo(0.4 * Plot.SIDE, within(0.1));
      assertThat(point.low()).isGreaterThan(point.y());
      assertThat(point.high()).isLessThan(point.y());
      for (var bin : List.of(new Bin(5, 1, 5), new Bin(5, 0, 0))) {
        var edge = Plot.of(List.of(bin)).points().get(0);
        assertThat(edge.high()).isBetween(Plot.TOP, Plot.TOP + Plot.SIDE);
        assertThat(edge.low()).isBetween(Plot.TOP, Plot.TOP + Plot.SIDE);
      }
    }

    @Test
    void countsInTen() {
      assertThat(Plot.of(List.of()).ticks())
          .extracting(Plot.Tick::text)
          .containsExactly("0", "2", "4", "6", "8", "10");
      assertThat(Plot.inTen(0.637, 1)).isEqualTo("6.4");
    }
  }

  @Nested
  class Tallies {

    private final List<KnownCause> causes =
        List.of(
            at("touching", 1),
            at("touching", 3),
            at("touching", 4),
            at("touching", 0),
            unjudged("touching"),
            at("dead-part", 1));

    @Test
    void countTheFirstAndTheFirstThree() {
      assertThat(Tally.of("", causes)).isEqualTo(new Tally("", 6, 5, 2, 3));
    }

    @Test
    void areByKindTheCommonestFirst() {
      assertThat(Tally.byKind(causes))
          .containsExactly(new Tally("touching", 5, 4, 1, 2), new Tally("dead-part", 1, 1, 1, 1));
    }
  }
}
