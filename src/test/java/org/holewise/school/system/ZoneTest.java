package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whose day it is. */
@Tag("fast")
class ZoneTest {

  private final SystemConfiguration settings = new SystemConfiguration();

  @Test
  void isTheComputersUnlessOneIsNamed() {
    assertThat(settings.zone(" ")).isEqualTo(ZoneId.systemDefault());
    var named = settings.zone(" Pacific/Kiritimati ");
    assertThat(named).isEqualTo(ZoneId.of("Pacific/Kiritimati"));
    assertThat(settings.clock(named).getZone()).isEqualTo(named);
  }

  @Test
  void thatIsUnknownStopsTheStartInWords() {
    assertThatThrownBy(() -> settings.zone("Lisbon"))
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("“Lisbon”")
        .hasMessageContaining("holewise.zone");
  }
}
