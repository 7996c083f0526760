package org.holewise.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class SeriesTest {

  /** IEC 60063, table of E96 (from memory); every second value is E48. */
  private static final List<Integer> TABLE_E96 =
      List.of(
          100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150,
          154, 158, 162, 165, 169, 174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232,
          237, 243, 249, 255, 261, 267, 274, 280, 287, 294, 301, 309, 316, 324, 332, 340, 348, 357,
          365, 374, 383, 392, 402, 412, 422, 432, 442, 453, 464, 475, 487, 499, 511, 523, 536, 549,
          562, 576, 590, 604, 619, 634, 649, 665, 681, 698, 715, 732, 750, 768, 787, 806, 825, 845,
          866, 887, 909, 931, 953, 976);

  @Test
  @Published(Family.CODE)
  void hasTheMembersOfTheStandard() {
    // IEC 60063
    assertThat(Series.E6.significands()).containsExactly(10, 15, 22, 33, 47, 68);
    assertThat(Series.E12.significands())
        .containsExactly(10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82);
    assertThat(Series.E24.significands())
        .containsExactly(
            10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75,
            82, 91);
    assertThat(Series.E96.significands()).isEqualTo(TABLE_E96);
    assertThat(Series.E48.significands()).hasSize(48);
    for (int i = 0; i < 48; i++) {
      assertThat(Series.E48.significands().get(i)).isEqualTo(TABLE_E96.get(2 * i));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "E12, 4700, 4700",
    "E12, 5000, 4700",
    "E12, 5200, 5600",
    "E6, 9.9, 10",
    "E6, 0.00000081, 0.00000068",
    "E6, 0.00000083, 0.000001",
    "E24, 386, 390",
    "E96, 5000, 4990",
    "E12, 995, 1000",
  })
  void findsTheMemberNearestByRatio(Series series, double value, double nearest) {
    assertThat(series.nearest(value)).isEqualTo(nearest);
  }

  @Test
  void findsTheMembersOnEitherSideAlsoOfAMember() {
    assertThat(Series.E12.above(4700)).isEqualTo(5600);
    assertThat(Series.E12.below(4700)).isEqualTo(3900);
    assertThat(Series.E12.above(5000)).isEqualTo(5600);
    assertThat(Series.E12.below(5000)).isEqualTo(4700);
    assertThat(Series.E12.above(820)).isEqualTo(1000);
    assertThat(Series.E12.below(1e-9)).isEqualTo(0.82e-9);
    assertThat(Series.E12.above(4.7 * 1000 * (1 + 1e-12))).isEqualTo(5600);
  }

  @ParameterizedTest
  @EnumSource(Series.class)
  void keepsToItsOwnDefinitions(Series series) {
    Random random = new Random(5);
    for (int i = 0; i < 2_000; i++) {
      double value = Math.pow(10, random.nextDouble(-12, 9));
      double below = series.below(value);
      double above = series.above(value);
      assertThat(below).isLessThan(value).isLessThan(above);
      assertThat(above).isGreaterThan(value);
      assertThat(series.above(below)).isEqualTo(series.contains(value) ? value : above);
      assertThat(series.contains(below)).isTrue();
      assertThat(series.nearest(value)).isEqualTo(value * value < below * above ? below : above);
      assertThat(series.nearest(below)).isEqualTo(below);
    }
  }

  @Test
  void knowsItsMembersToOnePartInAThousandMillion() {
    assertThat(Series.E24.contains(4700 * (1 + 9e-10))).isTrue();
    assertThat(Series.E24.contains(4700 * (1 + 2e-9))).isFalse();
    assertThat(Series.E24.contains(4.7e3)).isTrue();
    assertThat(Series.E24.contains(0.1 * 3)).isTrue();
    assertThat(Series.E12.contains(5100)).isFalse();
    assertThat(Series.E12.contains(Math.nextDown(1000.0))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatHasNoDecade(double value) {
    assertThatThrownBy(() -> Series.E12.nearest(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(Double.toString(value));
  }
}
