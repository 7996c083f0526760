package org.holewise.crash;

import java.nio.file.Path;
import org.holewise.running.Settings;
import org.holewise.store.Postgres;

class KillOnPostgresIT extends KillContract {

  private final Postgres.Server server = Postgres.emptyServer();

  @Override
  Settings settings(Path folder) {
    return Settings.on(server, folder);
  }

  @Override
  Kept kept(Path folder) {
    return Kept.in(settings(folder).data());
  }

  @Override
  int kills() {
    return Integer.getInteger("holewise.kills.postgres", 5);
  }
}
