package org.holewise.engine.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.holewise.engine.diagnosis.Priors.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Tables learnt from counted causes: expectations of a Dirichlet distribution (Bishop, Pattern
 * Recognition and Machine Learning, 2006, section 2.2.1: counts are added to the parameters).
 */
@Tag("fast")
class LearntPriorsTest {

  private static final double EXACT = 1e-12;

  private static final Map<Family, Integer> SOME =
      Map.of(Family.LEAD_CONTACT, 7, Family.SUPPLY_OFF, 2);

  private static double faults(Priors priors) {
    return priors.shares().values().stream().mapToDouble(share -> share).sum();
  }

  @Test
  void withoutCausesAreTheShippedOnes() {
    Priors learnt = Priors.learnt("none yet", Map.of(), 0);
    assertThat(learnt.sound()).isCloseTo(Priors.start().sound(), within(EXACT));
    assertThat(learnt.shares().keySet()).isEqualTo(Priors.start().shares().keySet());
    for (Family family : Priors.start().shares().keySet()) {
      assertThat(learnt.ofFaults(family))
          .isCloseTo(Priors.start().ofFaults(family), within(EXACT))
          .isPositive();
    }
  }

  @Test
  void addUpToOne() {
    Priors learnt = Priors.learnt("some", SOME, 5);
    assertThat(learnt.sound() + faults(learnt)).isCloseTo(1, within(EXACT));
  }

  @Test
  void weighTwentyAndOneForEachCause() {
    Priors before = Priors.learnt("none", Map.of(), 0);
    Priors learnt = Priors.learnt("some", SOME, 5);
    double weight = 20 + 7 + 2 + 5;
    assertThat(learnt.sound() * weight).isCloseTo(0.30 * 20 + 5, within(1e-9));
    assertThat(learnt.share(Family.LEAD_CONTACT) * weight)
        .isCloseTo(before.share(Family.LEAD_CONTACT) * 20 + 7, within(1e-9));
    assertThat(learnt.share(Family.SUPPLY_OFF) * weight)
        .isCloseTo(before.share(Family.SUPPLY_OFF) * 20 + 2, within(1e-9));
    assertThat(learnt.share(Family.METER) * weight)
        .isCloseTo(before.share(Family.METER) * 20, within(1e-9));
  }

  @Test
  void comeToWhatIsCountedInTheLongRun() {
    Priors learnt = Priors.learnt("many", Map.of(Family.TOUCHING, 60_000), 40_000);
    assertThat(learnt.sound()).isCloseTo(0.4, within(1e-3));
    assertThat(learnt.share(Family.TOUCHING)).isCloseTo(0.6, within(1e-3));
    assertThat(learnt.share(Family.PINS)).isPositive();
  }

  @Test
  void areTheSameInWhateverOrderCausesWereCounted() {
    var forth = new LinkedHashMap<Family, Integer>();
    forth.put(Family.SUPPLY_OFF, 2);
    forth.put(Family.LEAD_CONTACT, 7);
    var back = new LinkedHashMap<Family, Integer>();
    back.put(Family.LEAD_CONTACT, 7);
    back.put(Family.SUPPLY_OFF, 2);
    assertThat(Priors.learnt("same", forth, 1)).isEqualTo(Priors.learnt("same", back, 1));
  }

  @Test
  void takeNoCountsThatAreNone() {
    assertThatThrownBy(() -> Priors.learnt("x", Map.of(), -1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Priors.learnt("x", Map.of(Family.PINS, -1), 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Priors.learnt("x", Map.of(Family.NONE, 1), 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
