package org.holewise.school.roster;

import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.store.Postgres;

class BellOnPostgresIT extends BellContract {

  @Override
  RunningSchool start(Path data) {
    var server = Postgres.emptyServer();
    return RunningSchool.plain(
        data,
        "--spring.datasource.url=" + server.url(),
        "--spring.datasource.username=" + server.user(),
        "--spring.datasource.password=" + server.password());
  }
}
