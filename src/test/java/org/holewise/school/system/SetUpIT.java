package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.holewise.running.Log;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** How a school gets its first administrator. */
@ExtendWith(OutputCaptureExtension.class)
class SetUpIT {

  private static final String NAME = "Mara Lindqvist";
  private static final String PASSWORD = "violet kettle under seven ladders";

  @TempDir private Path data;

  @Test
  void startsWithNobodyAndSendsEverybodyToTheSetUp() {
    try (var school = RunningSchool.plain(data)) {
      assertThat(school.part(People.class).all()).isEmpty();
      assertThat(Visitor.target(new Visitor(school).opens("/"))).isEqualTo("/setup");
    }
  }

  @Test
  void takesTheCodeOnce(CapturedOutput output) {
    try (var school = RunningSchool.plain(data)) {
      var visitor = new Visitor(school);
      var codes = new Log(output).setUpCodes();
      assertThat(codes).hasSize(1);
      String code = codes.get(0);
      assertThat(Visitor.target(setsUp(visitor, typed(code), PASSWORD)))
          .isEqualTo("/sign-in?ready");
      assertThat(school.part(People.class).all())
          .extracting(Person::name, Person::role)
          .containsExactly(tuple(NAME, Role.ADMINISTRATOR));
      assertThat(visitor.opens("/setup").statusCode()).isEqualTo(404);
      assertThat(setsUp(visitor, code, PASSWORD).statusCode()).isIn(403, 404);
      assertThat(school.part(SetUp.class).complete(code, "Tom Okafor", PASSWORD)).isFalse();
      assertThat(visitor.opens("/").body()).contains("href=\"/card\"", "href=\"/sign-in\"");
      assertThat(Visitor.target(visitor.signsIn(NAME, PASSWORD))).isEqualTo("/");
      assertThat(Visitor.target(visitor.opens("/"))).isEqualTo("/people");
    }
  }

  @Test
  void refusesAnotherCodeAndKeepsTheRealOneForALaterTry(CapturedOutput output) {
    try (var school = RunningSchool.plain(data)) {
      var visitor = new Visitor(school);
      String code = new Log(output).setUpCodes().get(0);
      String other = (code.startsWith("A") ? "B" : "A") + code.substring(1);
      assertThat(setsUp(visitor, other, PASSWORD).body()).contains("This is not the set-up code");
      assertThat(setsUp(visitor, code, "too short").body()).contains("at least 15 characters");
      assertThat(setsUp(visitor, code, "passwordpassword").body()).contains("Choose another");
      assertThat(school.part(People.class).all()).isEmpty();
      assertThat(Visitor.target(setsUp(visitor, code, PASSWORD))).isEqualTo("/sign-in?ready");
    }
  }

  @Test
  void stopsListeningToWhoGuesses(CapturedOutput output) {
    try (var school = RunningSchool.plain(data)) {
      var visitor = new Visitor(school);
      HttpResponse<String> last = setsUp(visitor, "GUESS-0", PASSWORD);
      for (int i = 1; i < 11; i++) {
        last = setsUp(visitor, "GUESS-" + i, PASSWORD);
      }
      assertThat(last.body()).contains("too many tries");
      String code = new Log(output).setUpCodes().get(0);
      assertThat(setsUp(visitor, code, PASSWORD).body()).contains("too many tries");
      assertThat(school.part(People.class).all()).isEmpty();
    }
  }

  @Test
  void showsANewCodeAtEachStartUntilOneIsUsed(CapturedOutput output) {
    RunningSchool.plain(data).close();
    try (var school = RunningSchool.plain(data)) {
      var codes = new Log(output).setUpCodes();
      assertThat(codes).hasSize(2).doesNotHaveDuplicates();
      var visitor = new Visitor(school);
      assertThat(setsUp(visitor, codes.get(0), PASSWORD).body()).contains("not the set-up code");
      assertThat(setsUp(visitor, codes.get(1), PASSWORD).statusCode()).isEqualTo(302);
    }
    RunningSchool.plain(data).close();
    assertThat(new Log(output).setUpCodes()).hasSize(2);
  }

  @Test
  void makesOneAdministratorOfManyWhoComeAtOnce(CapturedOutput output) throws Exception {
    try (var school = RunningSchool.plain(data)) {
      String code = new Log(output).setUpCodes().get(0);
      var setUp = school.part(SetUp.class);
      Callable<Boolean> first = () -> setUp.complete(code, "Mara Lindqvist", PASSWORD);
      Callable<Boolean> second = () -> setUp.complete(code, "Tom Okafor", PASSWORD);
      var threads = Executors.newFixedThreadPool(2);
      var done = threads.invokeAll(List.of(first, second));
      threads.shutdown();
      assertThat(List.of(done.get(0).get(), done.get(1).get())).containsOnlyOnce(true);
      assertThat(school.part(People.class).all()).hasSize(1);
    }
  }

  private static String typed(String code) {
    return " " + code.toLowerCase(Locale.ROOT).replace("-", " ");
  }

  private static HttpResponse<String> setsUp(Visitor visitor, String code, String password) {
    return visitor.sends("/setup", "/setup", "code", code, "name", NAME, "password", password);
  }
}
