package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;

/** What holds of the counting of tries on every kind of database. */
abstract class TriesContract {

  private final HandClock clock = new HandClock();
  private final Tries tries;

  TriesContract(Store store) {
    tries = new Tries(store.migrated(), clock);
  }

  @Test
  void stopAfterSoMany() {
    assertThat(allowedOf(5, "a door", 3)).isEqualTo(3);
    assertThat(tries.allow("another door", 3)).isTrue();
  }

  @Test
  void areAllowedAgainAfterAQuarterOfAnHour() {
    allowedOf(4, "a door", 3);
    clock.forward(Duration.ofMinutes(14));
    assertThat(tries.allow("a door", 3)).isFalse();
    clock.forward(Duration.ofMinutes(16));
    assertThat(tries.allow("a door", 3)).isTrue();
  }

  @Test
  void startAnewWhenForgotten() {
    allowedOf(3, "a door", 3);
    tries.forget("a door");
    assertThat(allowedOf(3, "a door", 3)).isEqualTo(3);
  }

  @Test
  void areTakenBackOneByOne() {
    allowedOf(3, "a door", 3);
    tries.forgive("a door");
    assertThat(allowedOf(2, "a door", 3)).isEqualTo(1);
  }

  @Test
  void areOnlyLookedAtByWhoCountsTheWrongOnesAlone() {
    for (int i = 0; i < 3; i++) {
      assertThat(tries.areSpent("a card", 3)).isFalse();
      tries.count("a card");
    }
    assertThat(tries.areSpent("a card", 3)).isTrue();
    assertThat(tries.areSpent("a card", 4)).isFalse();
    assertThat(tries.areSpent("another card", 3)).isFalse();
    clock.forward(Duration.ofMinutes(16));
    assertThat(tries.areSpent("a card", 3)).isFalse();
  }

  private int allowedOf(int many, String what, int most) {
    int allowed = 0;
    for (int i = 0; i < many; i++) {
      allowed += tries.allow(what, most) ? 1 : 0;
    }
    return allowed;
  }
}
