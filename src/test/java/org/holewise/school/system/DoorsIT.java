package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may open what in a school of four people. */
class DoorsIT {

  private static final String PASSWORD = "violet kettle under seven ladders";

  private static RunningSchool school;
  private static String teachersToken;
  private static String studentsToken;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
    var people = school.part(People.class);
    var tokens = school.part(ApiTokens.class);
    var setUp = school.part(SetUp.class);
    assertThat(setUp.complete(setUp.newCode(), "Ada", PASSWORD)).isTrue();
    people.add("Tek", Role.TECHNICIAN, PASSWORD);
    teachersToken = tokens.make(people.add("Tom", Role.TEACHER, PASSWORD), "test");
    studentsToken = tokens.make(people.add("Sam", Role.STUDENT, PASSWORD), "test");
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @Nested
  class APage {

    @ParameterizedTest
    @CsvSource({
      "/today, Sam, /card",
      "/bench/1, Sam, /card",
      "/sessions, Tom Ada, /sign-in",
      "/sessions/1/room, Tom Ada, /sign-in",
      "/classes, Tom Ada, /sign-in",
      "/try, Tom Ada, /sign-in",
      "/store, Tek Ada, /sign-in",
      "/store/week, Tek Ada, /sign-in",
      "/account, Tom Ada Tek, /sign-in",
      "/people, Ada, /sign-in",
      "/audit, Ada, /sign-in",
      "/backups, Ada, /sign-in",
      "/demo/as/teacher, Tom Ada Tek Sam, /sign-in",
      "/anything-else, Tom Ada Tek Sam, /sign-in"
    })
    void isForItsRolesOnly(String page, String allowed, String door) {
      assertThat(Visitor.target(new Visitor(school).opens(page))).isEqualTo(door);
      for (String name : new String[] {"Tom", "Ada", "Tek", "Sam"}) {
        int status = signedIn(name).opens(page).statusCode();
        if (allowed.contains(name)) {
          assertThat(status).as("%s at %s", name, page).isIn(200, 404);
        } else {
          assertThat(status).as("%s at %s", name, page).isEqualTo(403);
        }
      }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sign-in", "/nothing", "/css/holewise.css", "/api/marks"})
    void comesWithStrictHeaders(String path) {
      var headers = signedIn("Ada").opens(path).headers();
      assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
          .startsWith("default-src 'none'")
          .contains("script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
          .doesNotContain("unsafe");
      assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
      assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(headers.firstValue("Permissions-Policy").orElse("")).contains("camera=()");
      assertThat(headers.firstValue("Cache-Control").orElse("")).contains("no-cache");
    }

    @Test
    void isNotKeptByACacheButAnAssetMayBe() {
      assertThat(header(new Visitor(school).opens("/sign-in"), "Cache-Control"))
          .contains("no-store");
      assertThat(header(new Visitor(school).opens("/css/holewise.css"), "Cache-Control"))
          .doesNotContain("no-store");
    }

    @Test
    void thatIsNotThereSaysSoInTheFrame() {
      var answer = signedIn("Tom").opens("/nothing");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(answer.body()).contains("No such page", "Sign out").doesNotContain("Whitelabel");
    }

    @ParameterizedTest
    @CsvSource({"Sam, /today", "Tom, /sessions", "Tek, /store", "Ada, /people"})
    void isWhereEachRoleBegins(String name, String home) {
      var visitor = signedIn(name);
      assertThat(Visitor.target(visitor.opens("/"))).isEqualTo(home);
      assertThat(visitor.opens("/nothing").body()).contains("href=\"" + home + "\"");
    }

    @Test
    void isMarkedInTheWayRoundAsTheOneThatIsOpen() {
      var tom = signedIn("Tom");
      assertThat(tom.opens("/try").body())
          .contains("<a href=\"/try\" aria-current=\"page\">", "<a href=\"/sessions\">");
      assertThat(tom.opens("/try/stage-cue").body())
          .contains("<a href=\"/try\" aria-current=\"true\">");
    }

    @ParameterizedTest
    @CsvSource({
      "application/x-www-form-urlencoded, name=%zz",
      "application/x-www-form-urlencoded, =nameless",
      "multipart/form-data, name=Wren"
    })
    void takesNoFormThatCannotBeRead(String type, String body) {
      var form =
          HttpRequest.newBuilder(school.at("/sign-in"))
              .header("Accept", "text/html")
              .header("Content-Type", type)
              .POST(BodyPublishers.ofString(body));
      assertThat(new Visitor(school).send(form.build()).statusCode()).isIn(400, 403);
    }

    @Test
    void takesNoFormThatWasNotOnAPageOfOurs() {
      var tom = signedIn("Tom");
      assertThat(tom.sendsBare("/account/tokens", "label", "forged").statusCode()).isEqualTo(403);
      assertThat(tom.opens("/account").body()).doesNotContain("forged");
    }
  }

  @Nested
  class SigningIn {

    @Test
    void givesANewSessionInAGuardedCookie() {
      var visitor = new Visitor(school);
      visitor.opens("/sign-in");
      var before = visitor.cookie("SESSION").orElseThrow();
      var answer = visitor.signsIn("Tom", PASSWORD);
      assertThat(visitor.cookie("SESSION").orElseThrow().getValue())
          .isNotEqualTo(before.getValue());
      assertThat(header(answer, "Set-Cookie")).contains("HttpOnly", "SameSite=Lax");
    }

    @Test
    void leadsBackToThePageThatWasAskedFor() {
      var visitor = new Visitor(school);
      visitor.opens("/account");
      visitor.send(
          HttpRequest.newBuilder(school.at("/forgotten.css"))
              .header("Accept", "text/css,*/*")
              .build());
      assertThat(Visitor.target(visitor.signsIn("Tom", PASSWORD))).startsWith("/account");
    }

    @Test
    void saysTheSameOfAWrongNameAndAWrongPassword() {
      var wrongName = new Visitor(school).signsIn("Nobody", PASSWORD);
      var wrongPassword = new Visitor(school).signsIn("Tek", "not the password at all");
      assertThat(wrongName.statusCode()).isEqualTo(wrongPassword.statusCode());
      assertThat(main(wrongName).replace("Nobody", "Tek")).isEqualTo(main(wrongPassword));
      assertThat(main(wrongName)).contains("do not belong together");
    }

    @Test
    void stopsForANameThatIsGuessedAt() {
      var people = school.part(People.class);
      people.add("Gus", Role.TEACHER, PASSWORD);
      var visitor = new Visitor(school);
      for (int i = 0; i < 10; i++) {
        assertThat(visitor.signsIn("Gus", "guess number " + i).body()).contains("do not belong");
      }
      assertThat(visitor.signsIn("Gus", PASSWORD).body()).contains("too many tries");
      assertThat(visitor.signsIn("Tom", PASSWORD).statusCode()).isEqualTo(302);
    }

    @Test
    void endsWithSigningOut() {
      var tom = signedIn("Tom");
      assertThat(tom.opens("/account").statusCode()).isEqualTo(200);
      assertThat(Visitor.target(tom.sends("/account", "/sign-out"))).isEqualTo("/?out");
      assertThat(tom.opens("/?out").body()).contains("You are signed out");
      assertThat(Visitor.target(tom.opens("/account"))).isEqualTo("/sign-in");
    }
  }

  @Nested
  class AScript {

    @ParameterizedTest
    @CsvSource({"Accept, */*", "Accept, application/json", "Sec-Fetch-Mode, same-origin"})
    void isToldThatNobodyIsSignedIn(String name, String value) {
      for (var method : new String[] {"GET", "POST"}) {
        var call =
            HttpRequest.newBuilder(school.at("/bench/1/entries"))
                .header("Accept", "text/html")
                .setHeader(name, value)
                .method(method, BodyPublishers.ofString("{}"));
        var answer = called(call);
        assertThat(answer.statusCode()).as(method).isEqualTo(401);
        assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
      }
    }

    @Test
    void sendsTheTokenOfItsPage() {
      var sam = signedIn("Sam");
      var page = sam.opens("/nothing").body();
      String token = page.replaceFirst("(?s).*<meta name=\"csrf\" content=\"([^\"]+)\".*", "$1");
      assertThat(token).hasSizeBetween(40, 200);
      var bare = entries();
      assertThat(sam.send(bare.build()).statusCode()).isEqualTo(403);
      var whole = entries().header("X-CSRF-TOKEN", token);
      assertThat(sam.send(whole.build()).statusCode()).isEqualTo(404);
      assertThat(new Visitor(school).opens("/sign-in").body()).doesNotContain("name=\"csrf\"");
    }

    @Test
    void isToldApartFromAFormThatWasOpenForTooLong() {
      var page = new Visitor(school).sendsBare("/account/tokens", "label", "late");
      assertThat(page.statusCode()).isEqualTo(403);
      assertThat(page.body()).contains("This page was open for too long");
    }

    private static HttpRequest.Builder entries() {
      return HttpRequest.newBuilder(school.at("/bench/1/entries"))
          .header("Accept", "application/json")
          .header("Content-Type", "application/json")
          .POST(BodyPublishers.ofString("{\"entries\": []}"));
    }
  }

  @Nested
  class Health {

    @Test
    void isOpenAndBare() {
      var answer = called(HttpRequest.newBuilder(school.at("/actuator/health")));
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).isEqualTo("{\"status\":\"UP\"}");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "/actuator", "/actuator/env", "/actuator/health/db", "/actuator/health/liveness",
          "/actuator/heapdump", "/actuator/loggers", "/actuator/mappings", "/actuator/sessions"
        })
    void isAllThatIsOpen(String path) {
      assertThat(new Visitor(school).opens(path).statusCode()).isEqualTo(404);
      assertThat(signedIn("Ada").opens(path).statusCode()).isIn(403, 404);
    }
  }

  @Nested
  class TheApi {

    @Test
    void asksForAToken() {
      var answer = called(HttpRequest.newBuilder(school.at("/api/marks")));
      assertThat(answer.statusCode()).isEqualTo(401);
      assertThat(header(answer, "WWW-Authenticate")).isEqualTo("Bearer realm=\"Holewise\"");
      assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
      assertThat(answer.body()).contains("\"status\":401");
      assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void refusesATokenThatItDoesNotKnow() {
      var answer = called(call("/api/marks", "0".repeat(64)));
      assertThat(answer.statusCode()).isEqualTo(401);
      assertThat(header(answer, "WWW-Authenticate")).contains("error=\"invalid_token\"");
    }

    @Test
    void refusesAPersonWhoDoesNotTeach() {
      var answer = called(call("/api/marks", studentsToken));
      assertThat(answer.statusCode()).isEqualTo(403);
      assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
    }

    @Test
    void takesNoSessionInPlaceOfAToken() {
      var call = HttpRequest.newBuilder(school.at("/api/marks"));
      assertThat(signedIn("Tom").send(call.build()).statusCode()).isEqualTo(401);
    }

    @Test
    void saysWhatIsNotThereAsAProblem() {
      var answer = called(call("/api/nothing", teachersToken));
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
    }

    @ParameterizedTest
    @CsvSource({"/api/marks, 262144", "/api/marks/batch, 8388608"})
    void takesABodyUpToItsLimit(String path, int limit) {
      for (boolean announced : new boolean[] {true, false}) {
        assertThat(called(post(path, limit, announced)).statusCode()).isNotIn(401, 403, 413);
        var refused = called(post(path, limit + 1, announced));
        assertThat(refused.statusCode()).isEqualTo(413);
        assertThat(header(refused, "Content-Type")).isEqualTo("application/problem+json");
      }
    }
  }

  private static HttpRequest.Builder post(String path, int length, boolean announced) {
    var body = new byte[length];
    BodyPublisher publisher =
        announced
            ? BodyPublishers.ofByteArray(body)
            : BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body));
    return call(path, teachersToken).header("Content-Type", "application/json").POST(publisher);
  }

  private static HttpRequest.Builder call(String path, String token) {
    return HttpRequest.newBuilder(school.at(path)).header("Authorization", "Bearer " + token);
  }

  private static HttpResponse<String> called(HttpRequest.Builder call) {
    return new Visitor(school).send(call.build());
  }

  private static Visitor signedIn(String name) {
    var visitor = new Visitor(school);
    assertThat(visitor.signsIn(name, PASSWORD).statusCode()).isEqualTo(302);
    return visitor;
  }

  private static String header(HttpResponse<String> answer, String name) {
    return String.join("; ", answer.headers().allValues(name));
  }

  private static String main(HttpResponse<String> page) {
    return page.body()
        .replaceAll("(?s).*<main|</main>.*", "")
        .replaceAll("name=\"_csrf\" value=\"[^\"]*\"", "");
  }
}
