package org.holewise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Properties;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class HolewiseApplicationTest {

  @Test
  void settingsCarryTheVersionOfTheBuild() throws IOException {
    var settings = new Properties();
    try (var file = getClass().getResourceAsStream("/application.properties")) {
      settings.load(file);
    }
    assertThat(settings.getProperty("holewise.version")).matches("\\d+\\.\\d+\\.\\d+");
  }
}
