package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How people of the staff get, change and lose their accounts, and what is noted of it. */
class StaffPagesIT {

  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final String OTHER = "orange kettle beside nine benches";

  @TempDir private Path data;

  private RunningSchool school;
  private Person ada;
  private Person tom;

  @BeforeEach
  void open() {
    school = RunningSchool.plain(data);
    ada = school.part(People.class).add("Ada", Role.ADMINISTRATOR, PASSWORD);
    tom = school.part(People.class).add("Tom", Role.TEACHER, PASSWORD);
  }

  @AfterEach
  void close() {
    school.close();
  }

  @Nested
  class WhoseAccountIsTakenAway {

    @Test
    void isOutAtOnceEverywhereAndCannotComeBack() {
      String token = school.part(ApiTokens.class).make(tom, "lab printer");
      var desk = signedIn("Tom", PASSWORD);
      var phone = signedIn("Tom", PASSWORD);
      var namesake = school.part(People.class).addStudent("Tom");
      var admin = signedIn("Ada", PASSWORD);
      assertThat(desk.opens("/account").statusCode()).isEqualTo(200);
      assertThat(Visitor.target(takesAway(admin, tom))).isEqualTo("/people");
      assertThat(admin.opens("/people").body()).contains("Tom can no longer sign in");
      assertThat(Visitor.target(desk.opens("/account"))).isEqualTo("/sign-in");
      assertThat(Visitor.target(phone.opens("/account"))).isEqualTo("/sign-in");
      assertThat(called(token)).isEqualTo(401);
      assertThat(main(new Visitor(school).signsIn("Tom", PASSWORD)))
          .isEqualTo(main(new Visitor(school).signsIn("Tom", OTHER)))
          .contains("do not belong together");
      assertThat(namesake.id()).isNotEqualTo(tom.id());
      assertThat(admin.opens("/people").statusCode()).isEqualTo(200);
    }

    @Test
    void comesBackWithTheirNewFirstPassword() {
      var admin = signedIn("Ada", PASSWORD);
      takesAway(admin, tom);
      assertThat(admin.opens("/people/" + tom.id()).body()).contains("Give the account back");
      admits(admin, tom, OTHER);
      signedIn("Tom", OTHER);
      assertThat(new Visitor(school).signsIn("Tom", PASSWORD).body()).contains("do not belong");
    }

    @Test
    void isNotTheLastAdministrator() {
      var admin = signedIn("Ada", PASSWORD);
      assertThat(takesAway(admin, ada).body()).contains("it is the last administrator");
      assertThat(admin.opens("/people").statusCode()).isEqualTo(200);
      signedIn("Ada", PASSWORD);
    }

    @Test
    void mayBeWhoTakesItAway() {
      school.part(People.class).add("Bea", Role.ADMINISTRATOR, PASSWORD);
      var admin = signedIn("Ada", PASSWORD);
      takesAway(admin, ada);
      assertThat(Visitor.target(admin.opens("/people"))).isEqualTo("/sign-in");
    }

    @Test
    void isNoStudentAndSomebodyWhoIsThere() {
      var admin = signedIn("Ada", PASSWORD);
      var wren = school.part(People.class).addStudent("Wren");
      for (long id : new long[] {wren.id(), 4711}) {
        assertThat(admin.opens("/people/" + id).statusCode()).isEqualTo(404);
        assertThat(admin.sends("/people", "/people/" + id + "/left").statusCode()).isEqualTo(404);
      }
    }
  }

  @Nested
  class ANewFirstPassword {

    @Test
    void endsTheOldOneAndTheSessions() {
      var desk = signedIn("Tom", PASSWORD);
      var admin = signedIn("Ada", PASSWORD);
      assertThat(Visitor.target(admits(admin, tom, OTHER))).isEqualTo("/people");
      assertThat(Visitor.target(desk.opens("/account"))).isEqualTo("/sign-in");
      assertThat(new Visitor(school).signsIn("Tom", PASSWORD).body()).contains("do not belong");
      signedIn("Tom", OTHER);
    }

    @Test
    void isHeldToTheRules() {
      var admin = signedIn("Ada", PASSWORD);
      assertThat(admits(admin, tom, "short").body()).contains("at least 15 characters");
      assertThat(admits(admin, tom, "Tom Tom Tom Tom Tom").body()).contains("Choose another");
      signedIn("Tom", PASSWORD);
    }
  }

  @Nested
  class OnesOwnPassword {

    @Test
    void isChangedByWhoKnowsItAndOtherSessionsEnd() {
      var desk = signedIn("Tom", PASSWORD);
      var phone = signedIn("Tom", PASSWORD);
      var admin = signedIn("Ada", PASSWORD);
      String before = desk.cookie("SESSION").orElseThrow().getValue();
      assertThat(Visitor.target(changes(desk, PASSWORD, OTHER, OTHER))).isEqualTo("/account");
      assertThat(desk.opens("/account").body()).contains("Your password is changed");
      assertThat(desk.cookie("SESSION").orElseThrow().getValue()).isNotEqualTo(before);
      assertThat(Visitor.target(phone.opens("/account"))).isEqualTo("/sign-in");
      assertThat(admin.opens("/people").statusCode()).isEqualTo(200);
      signedIn("Tom", OTHER);
    }

    @Test
    void isKeptWhereAnEntryIsWrong() {
      var desk = signedIn("Tom", PASSWORD);
      assertThat(changes(desk, OTHER, OTHER, OTHER).body()).contains("not your present password");
      assertThat(changes(desk, PASSWORD, "short", "short").body()).contains("at least 15");
      assertThat(changes(desk, PASSWORD, OTHER, PASSWORD).body()).contains("Type both again");
      assertThat(desk.sends("/account/password", "/account/password").statusCode()).isEqualTo(200);
      signedIn("Tom", PASSWORD);
    }

    @Test
    void cannotBeGuessedAtAnOpenDesk() {
      var desk = signedIn("Tom", PASSWORD);
      for (int i = 0; i < 10; i++) {
        changes(desk, "guess number " + i, OTHER, OTHER);
      }
      assertThat(changes(desk, PASSWORD, OTHER, OTHER).body()).contains("too many tries");
    }
  }

  @Test
  void everybodyOfTheStaffHasAnAccountPageAndTeachersTokens() {
    school.part(People.class).add("Tek", Role.TECHNICIAN, PASSWORD);
    var tek = signedIn("Tek", PASSWORD);
    assertThat(tek.opens("/account").body())
        .contains("Change your password")
        .doesNotContain("Make a token");
    assertThat(tek.sends("/account", "/account/tokens", "label", "x").statusCode()).isEqualTo(403);
    assertThat(signedIn("Tom", PASSWORD).opens("/account").body()).contains("Make a token");
  }

  @Test
  void whatWasDoneIsReadByAdministratorsLatestFirst() {
    var admin = signedIn("Ada", PASSWORD);
    admin.sends("/people", "/people", "name", "Bea", "role", "TEACHER", "password", PASSWORD);
    var bea = school.part(People.class).named("Bea").orElseThrow();
    takesAway(admin, bea);
    String page = admin.opens("/audit").body();
    assertThat(page)
        .containsSubsequence(
            "Took the account of person " + bea.id() + " away",
            "Bea",
            "Added person " + bea.id(),
            "Signed in");
    assertThat(signedIn("Tom", PASSWORD).opens("/audit").statusCode()).isEqualTo(403);
  }

  @Test
  void signingInIsNotedOnceAndAProgramsCallIsNot() {
    String token = school.part(ApiTokens.class).make(tom, "lab printer");
    called(token);
    new Visitor(school).signsIn("Tom", OTHER);
    assertThat(school.part(Audit.class).before(Long.MAX_VALUE, 9)).isEmpty();
    var desk = signedIn("Tom", PASSWORD);
    desk.opens("/account");
    desk.opens("/account");
    assertThat(school.part(Audit.class).before(Long.MAX_VALUE, 9))
        .extracting(AuditEvent::act)
        .containsExactly("signed.in");
  }

  @Test
  void aHundredActsAreAPage() {
    for (int i = 1; i <= 205; i++) {
      school.part(Audit.class).note(ada, "odd.act", "thing", i);
    }
    var admin = signedIn("Ada", PASSWORD);
    String first = admin.opens("/audit").body();
    assertThat(first).contains("odd.act (thing 205)", "odd.act (thing 107)");
    assertThat(first).doesNotContain("odd.act (thing 106)").contains("Earlier");
    String link = first.replaceAll("(?s).*(/audit\\?before=\\d+).*", "$1");
    String second = admin.opens(link).body();
    assertThat(second).contains("odd.act (thing 106)", "odd.act (thing 7)");
    String last = admin.opens(second.replaceAll("(?s).*(/audit\\?before=\\d+).*", "$1")).body();
    assertThat(last).contains("odd.act (thing 6)", "odd.act (thing 1)", "The latest");
    assertThat(last).doesNotContain("before=");
  }

  private Visitor signedIn(String name, String password) {
    var visitor = new Visitor(school);
    assertThat(visitor.signsIn(name, password).statusCode()).as(name).isEqualTo(302);
    return visitor;
  }

  private static HttpResponse<String> takesAway(Visitor admin, Person person) {
    return admin.sends("/people/" + person.id(), "/people/" + person.id() + "/left");
  }

  private static HttpResponse<String> admits(Visitor admin, Person person, String password) {
    String page = "/people/" + person.id();
    return admin.sends(page, page + "/password", "password", password);
  }

  private static HttpResponse<String> changes(
      Visitor who, String current, String password, String again) {
    String page = "/account/password";
    return who.sends(page, page, "current", current, "password", password, "again", again);
  }

  private int called(String token) {
    var call =
        HttpRequest.newBuilder(school.at("/api/marks")).header("Authorization", "Bearer " + token);
    return new Visitor(school).send(call.build()).statusCode();
  }

  private static String main(HttpResponse<String> page) {
    return page.body()
        .replaceAll("(?s).*<main|</main>.*", "")
        .replaceAll("name=\"_csrf\" value=\"[^\"]*\"", "");
  }
}
