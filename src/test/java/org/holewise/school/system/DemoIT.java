package org.holewise.school.system;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.holewise.running.Log;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSessions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** A demo is open to everybody, and therefore to its own computer only. */
@ExtendWith(OutputCaptureExtension.class)
class DemoIT {

  @TempDir private Path data;

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7"})
  void refusesToListenElsewhere(String address) {
    assertThatThrownBy(() -> RunningSchool.demo(data, "--server.address=" + address))
        .rootCause()
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("loopback");
  }

  @Test
  void answersToItsOwnNamesOnly() throws IOException {
    try (var school = RunningSchool.demo(data)) {
      for (String own : new String[] {"localhost", "LOCALHOST:80", "127.0.0.1", "[::1]:9"}) {
        assertThat(asked(school, own)).as(own).startsWith("HTTP/1.1 200");
      }
      for (String foreign :
          new String[] {
            "school.example", "localhost.example:80", "127.0.0.1.example", "10.0.0.1", ""
          }) {
        assertThat(asked(school, foreign)).as(foreign).startsWith("HTTP/1.1 421");
      }
    }
  }

  @Test
  void showsOneTokenAStartAndEndsTheOneBefore(CapturedOutput output) {
    RunningSchool.demo(data).close();
    try (var school = RunningSchool.demo(data)) {
      var tokens = new Log(output).demoTokens();
      assertThat(tokens).hasSize(2);
      assertThat(calledWith(school, tokens.get(0))).isEqualTo(401);
      assertThat(calledWith(school, tokens.get(1))).isNotIn(401, 403);
    }
  }

  @Test
  void hasNoSetUpAndNoWayToSignIn(CapturedOutput output) {
    try (var school = RunningSchool.demo(data)) {
      var visitor = new Visitor(school);
      assertThat(new Log(output).setUpCodes()).isEmpty();
      assertThat(visitor.opens("/setup").statusCode()).isEqualTo(404);
      for (String password : new String[] {"", "demo", "password", "Demo teacher"}) {
        assertThat(visitor.signsIn("Demo teacher", password).body()).contains("do not belong");
      }
      assertThat(Visitor.target(visitor.opens("/account"))).isEqualTo("/");
      assertThat(Visitor.target(visitor.opens("/people"))).isEqualTo("/");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "student, /today, Student",
    "teacher, /sessions, Teacher",
    "technician, /store, Technician",
    "administrator, /people, Administrator"
  })
  void letsAVisitorBeWhoeverTheyChoose(String role, String home, String shown) {
    try (var school = RunningSchool.demo(data)) {
      var visitor = new Visitor(school);
      assertThat(visitor.sendsBare("/demo/as/" + role).statusCode()).isEqualTo(403);
      assertThat(visitor.opens("/demo/as/" + role).statusCode()).isEqualTo(405);
      assertThat(visitor.opens("/").body()).doesNotContain("Demo school · as");
      assertThat(visitor.sends("/", "/demo/as/headmaster").statusCode()).isEqualTo(404);
      assertThat(Visitor.target(visitor.sends("/", "/demo/as/" + role))).isEqualTo(home);
      assertThat(visitor.opens("/").body())
          .contains("Demo school · as " + shown, "href=\"" + home + "\"");
    }
  }

  @Test
  void changesRolesWithANewSession() {
    try (var school = RunningSchool.demo(data)) {
      var visitor = new Visitor(school);
      visitor.sends("/", "/demo/as/teacher");
      var teacher = visitor.cookie("SESSION").orElseThrow().getValue();
      visitor.sends("/", "/demo/as/student");
      assertThat(visitor.cookie("SESSION").orElseThrow().getValue()).isNotEqualTo(teacher);
      assertThat(visitor.opens("/sessions").statusCode()).isEqualTo(403);
      assertThat(visitor.opens("/try").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void isThereBeforeTheFirstVisitorAndTheSameAfterASecondStart() {
    String first;
    try (var school = RunningSchool.demo(data)) {
      first = everything(school);
      assertThat(first).contains("Wren", "Teasel", "Demo technician", "9b");
    }
    try (var school = RunningSchool.demo(data)) {
      assertThat(everything(school)).isEqualTo(first);
    }
  }

  @Test
  void isNotOpenedByASchoolNorASchoolByADemo(@TempDir Path other) {
    RunningSchool.demo(data).close();
    assertThatThrownBy(() -> RunningSchool.plain(data))
        .rootCause()
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("demo school");
    RunningSchool.plain(other).close();
    assertThatThrownBy(() -> RunningSchool.demo(other))
        .rootCause()
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("belong to a school");
  }

  @Test
  void saysSoWhereAnotherHasItsDataOpen() throws IOException {
    RunningSchool.demo(data).close();
    try (var file = FileChannel.open(data.resolve("holewise.mv.db"), StandardOpenOption.WRITE);
        var lock = file.lock()) {
      assertThat(lock.isValid()).isTrue();
      assertThatThrownBy(() -> RunningSchool.demo(data))
          .rootCause()
          .isInstanceOf(RefusedStart.class)
          .hasMessageContaining("data open");
    }
  }

  /** The first bytes of the answer to a bare request under that name. */
  private static String asked(RunningSchool school, String host) throws IOException {
    try (var socket = new Socket(InetAddress.getLoopbackAddress(), school.port())) {
      String request = "GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), US_ASCII);
    }
  }

  private static String everything(RunningSchool school) {
    return school.part(People.class).all().toString()
        + school.part(Classes.class).all()
        + school.part(LabSessions.class).all().stream()
            .map(session -> school.part(Benches.class).of(session))
            .toList();
  }

  private static int calledWith(RunningSchool school, String token) {
    var call =
        HttpRequest.newBuilder(school.at("/api/marks")).header("Authorization", "Bearer " + token);
    return new Visitor(school).send(call.build()).statusCode();
  }
}
