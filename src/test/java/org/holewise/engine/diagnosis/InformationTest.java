package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a reading is expected to tell, where arithmetic says it. */
@Tag("fast")
class InformationTest {
  private static final double BEYOND = Double.POSITIVE_INFINITY;
  private static final double ROUNDING = 1e-12;

  private static double gain(double[] probability, int[] place, double... mean) {
    double[] variance = new double[mean.length];
    Arrays.fill(variance, 1);
    return Information.gain(probability, place, mean, variance);
  }

  @Test
  void aNumberAndNoneTellTwoPlacesApart() {
    assertThat(gain(new double[] {0.5, 0.5}, new int[] {0, 1}, 330, BEYOND))
        .isCloseTo(1, within(ROUNDING));
  }

  @Test
  void noNumberEitherWayTellsNothing() {
    assertThat(gain(new double[] {0.5, 0.5}, new int[] {0, 1}, BEYOND, BEYOND)).isZero();
  }

  /** Of four equal places one is told by a number and three are left: 2 − ¾·log₂3 bit. */
  @Test
  void placesBeyondTheRangeStayTogether() {
    double[] quarter = {0.25, 0.25, 0.25, 0.25};
    assertThat(gain(quarter, new int[] {0, 1, 2, 3}, 0, BEYOND, BEYOND, BEYOND))
        .isCloseTo(2 - 0.75 * Math.log(3) / Math.log(2), within(ROUNDING));
  }

  @Test
  void entropyIsThatOfShares() {
    assertThat(Information.entropy(new double[] {3, 0, 3, 6}, 12)).isCloseTo(1.5, within(ROUNDING));
  }
}
