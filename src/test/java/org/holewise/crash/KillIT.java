package org.holewise.crash;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.holewise.running.Settings;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

class KillIT extends KillContract {

  private static final String FILE = "holewise.mv.db";

  @Override
  Settings settings(Path folder) {
    return Settings.embedded(folder);
  }

  /** A copy is looked at, so that it is the application itself that finds the data as they were. */
  @Override
  Kept kept(Path folder) {
    try {
      var copy = Files.createTempDirectory(folder, "copy");
      Files.copy(folder.resolve(FILE), copy.resolve(FILE));
      var settings = Settings.embedded(copy);
      var source =
          new SingleConnectionDataSource(
              settings.url(), settings.user(), settings.password(), true);
      try {
        return Kept.in(JdbcClient.create(source));
      } finally {
        source.destroy();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  int kills() {
    return Integer.getInteger("holewise.kills", 20);
  }
}
