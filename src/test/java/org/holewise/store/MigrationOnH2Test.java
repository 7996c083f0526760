package org.holewise.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class MigrationOnH2Test extends MigrationContract {

  MigrationOnH2Test() {
    super(new H2());
  }

  /** H2 does not take a half-run file back: one statement a file, and it is whole or not at all. */
  @Test
  void eachFileHasOneStatement() throws IOException {
    try (var files = Files.list(Path.of("db", "common"))) {
      assertThat(files).isNotEmpty().allSatisfy(file -> assertThat(statements(file)).isOne());
    }
  }

  private static long statements(Path file) throws IOException {
    return Files.readString(file).chars().filter(character -> character == ';').count();
  }
}
