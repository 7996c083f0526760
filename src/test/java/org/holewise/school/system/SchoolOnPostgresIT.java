package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.holewise.running.Log;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.store.Postgres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** A whole school on a database server: from its first start to a token. */
@ExtendWith(OutputCaptureExtension.class)
class SchoolOnPostgresIT {

  private static final String PASSWORD = "violet kettle under seven ladders";

  @Test
  void worksAsOnTheEmbeddedOne(@TempDir Path data, CapturedOutput output) {
    var server = Postgres.emptyServer();
    try (var school = RunningSchool.plain(data, settings(server))) {
      var visitor = new Visitor(school);
      String code = new Log(output).setUpCodes().get(0);
      visitor.sends("/setup", "/setup", "code", code, "name", "Mara", "password", PASSWORD);
      assertThat(Visitor.target(visitor.signsIn("mara", PASSWORD))).isEqualTo("/");
      var made = visitor.sends("/account", "/account/tokens", "label", "lab printer");
      assertThat(made.body()).contains("Your new token");
      assertThat(data).isEmptyDirectory();
    }
    assertThatThrownBy(() -> RunningSchool.demo(data, settings(server)))
        .rootCause()
        .isInstanceOf(RefusedStart.class);
  }

  private static String[] settings(Postgres.Server server) {
    return new String[] {
      "--spring.datasource.url=" + server.url(),
      "--spring.datasource.username=" + server.user(),
      "--spring.datasource.password=" + server.password()
    };
  }
}
