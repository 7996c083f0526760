package org.holewise.engine.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class WrightOmegaTest {

  /** W(1), the omega constant (OEIS A030178). */
  @Test
  void isTheOmegaConstantAtZero() {
    assertThat(WrightOmega.of(0)).isCloseTo(0.5671432904097838, within(2e-16));
  }

  /** 1 + ln 1 = 1 and e + ln e = e + 1. */
  @Test
  void isExactWhereTheLogarithmIs() {
    assertThat(WrightOmega.of(1)).isCloseTo(1, within(3e-16));
    assertThat(WrightOmega.of(Math.E + 1)).isCloseTo(Math.E, within(5e-16));
  }

  /** W(2) = 0.852605502013725491346472414695… (OEIS A299613), so ω(ln 2). */
  @Test
  void agreesWithLambertAtTwo() {
    assertThat(WrightOmega.of(Math.log(2))).isCloseTo(0.8526055020137255, within(3e-16));
  }

  @Test
  void solvesItsEquationEverywhere() {
    for (double z = -700; z < 1e6; z += 0.37 + Math.abs(z) / 50) {
      double w = WrightOmega.of(z);
      assertThat(w).isPositive();
      assertThat(w + Math.log(w)).isCloseTo(z, within(2e-15 * Math.max(1, Math.abs(z))));
    }
  }
}
