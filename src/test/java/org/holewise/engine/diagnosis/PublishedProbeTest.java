package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The classic example of model-based diagnosis: de Kleer and Williams 1987, Diagnosing multiple
 * faults, Artificial Intelligence 32 (from memory, recomputed). Multipliers M1 = A·C, M2 = B·D, M3
 * = C·E and adders A1 = M1 + M2 → F, A2 = M2 + M3 → G; inputs 3 2 2 3 3; F is 10 where 12 is right,
 * G is 12. Minimal diagnoses {A1}, {M1}, {A2, M2}, {M2, M3}, each component failing with 0.01.
 */
@Tag("fast")
class PublishedProbeTest {
  private static final double FAILS = 0.01;
  private static final int[] DIAGNOSIS = {0, 1, 2, 3};
  private static final int[] FAILING = {1, 1, 2, 2};

  /** What each diagnosis says of a point: M1's output X, M2's Y, M3's Z. */
  private static final double[] X = {6, 4, 6, 6};

  private static final double[] Y = {6, 6, 4, 4};
  private static final double[] Z = {6, 6, 6, 8};

  private static double[] diagnoses() {
    double[] logs = new double[FAILING.length];
    for (int i = 0; i < logs.length; i++) {
      logs[i] = FAILING[i] * Math.log(FAILS) + (5 - FAILING[i]) * Math.log(1 - FAILS);
    }
    return Information.normalised(logs);
  }

  private static double gain(double[] outcome) {
    double[] exact = {1e-6, 1e-6, 1e-6, 1e-6};
    return Information.gain(diagnoses(), DIAGNOSIS, outcome, exact);
  }

  @Test
  @Published(Family.METER)
  void ranksOneFaultBeforeTwo() {
    assertThat(diagnoses())
        .containsExactly(new double[] {0.495, 0.495, 0.005, 0.005}, within(5e-4));
  }

  @Test
  @Published(Family.METER)
  void probesWhereTheOutcomeIsLeastCertain() {
    assertThat(gain(X)).isCloseTo(0.99993, within(5e-5));
    assertThat(gain(Y)).isCloseTo(0.0808, within(5e-4));
    assertThat(gain(Z)).isCloseTo(0.0454, within(5e-4));
  }
}
