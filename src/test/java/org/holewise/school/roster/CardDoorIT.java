package org.holewise.school.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.account.Tries;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A student comes in with a card, while the class is at work. */
class CardDoorIT {

  private static final String NO_CARD = "No card has this code";
  private static final String NOT_NOW = "your class has no session just now";
  private static final String TOO_MANY = "There were too many wrong codes";

  @TempDir private Path data;

  private RunningSchool school;
  private Person teacher;
  private ClassGroup group;
  private Person wren;
  private String code;
  private LabSession session;

  @BeforeEach
  void aClassWithASession() {
    school = RunningSchool.plain(data);
    teacher = school.part(People.class).addWithoutPassword("Tom", Role.TEACHER);
    group = school.part(Classes.class).add("9b");
    wren = school.part(Classes.class).addStudent(group, "Wren");
    code = school.part(Cards.class).make(wren);
    var entry = school.part(Library.class).exercises().get(0);
    var version = school.part(ExerciseVersions.class).of(entry);
    var day = LocalDate.of(2031, 3, 4);
    var plan = new Plan(group, version, day, 2, HintStep.PART, false);
    session = school.part(LabSessions.class).plan(teacher, plan);
  }

  @AfterEach
  void close() {
    school.close();
  }

  @Nested
  class WhileTheClassIsAtWork {

    @BeforeEach
    void open() {
      assertThat(sessions().open(teacher, session.id())).isTrue();
    }

    @Test
    void aCardOpensTheDayInASessionOfItsOwn() {
      var visitor = new Visitor(school);
      visitor.opens("/card");
      var before = visitor.cookie("SESSION").orElseThrow().getValue();
      var answer = comesIn(visitor, code);
      assertThat(Visitor.target(answer)).isEqualTo("/today");
      assertThat(answer.headers().allValues("Set-Cookie").toString())
          .contains("HttpOnly", "SameSite=Lax");
      assertThat(visitor.cookie("SESSION").orElseThrow().getValue()).isNotEqualTo(before);
      assertThat(nobodyIsIn(before)).isTrue();
      assertThat(visitor.opens("/nothing").body()).contains("Wren", "Sign out");
    }

    @ParameterizedTest
    @ValueSource(strings = {"as printed", "small", "bare", "spaced"})
    void theCodeMayBeTypedInAnyWay(String way) {
      String typed =
          switch (way) {
            case "small" -> code.toLowerCase(Locale.ROOT);
            case "bare" -> code.replace("-", "");
            case "spaced" -> "  " + code.replace("-", " ") + " ";
            default -> code;
          };
      assertThat(Visitor.target(comesIn(new Visitor(school), typed))).isEqualTo("/today");
    }

    @Test
    void theNextStudentOfTheSameTabletIsThatStudent() {
      var sorrel = school.part(Classes.class).addStudent(group, "Sorrel");
      String other = school.part(Cards.class).make(sorrel);
      var tablet = new Visitor(school);
      comesIn(tablet, code);
      comesIn(tablet, other);
      assertThat(tablet.opens("/nothing").body()).contains("Sorrel").doesNotContain("Wren");
    }

    @Test
    void anUnknownCodeIsRefusedAndStaysAsTyped() {
      var page = comesIn(new Visitor(school), "CDF34-<b>").body();
      assertThat(page).contains(NO_CARD, "value=\"CDF34-&lt;b&gt;\"");
      assertThat(comesIn(new Visitor(school), " ").body()).contains("Type the code");
    }

    @Test
    void aCardIsDeadOnceThereIsANewOneOrTheStudentLeftTheClass() {
      String next = school.part(Cards.class).make(wren);
      assertThat(comesIn(new Visitor(school), code).body()).contains(NO_CARD);
      assertThat(Visitor.target(comesIn(new Visitor(school), next))).isEqualTo("/today");
      assertThat(school.part(Classes.class).remove(group, wren.id())).isTrue();
      assertThat(comesIn(new Visitor(school), next).body()).contains(NO_CARD);
    }

    @Test
    void onlyWrongCodesAreCountedAndManyOfThemStopTheAddress() {
      comesIn(new Visitor(school), code);
      assertThat(triesKept()).isZero();
      comesIn(new Visitor(school), "CDF34-GHJ67-KMN9P");
      assertThat(triesKept()).isOne();
      for (int i = 1; i < CardDoor.WRONG_BY_ADDRESS; i++) {
        school.part(Tries.class).count("card from 127.0.0.1");
      }
      assertThat(comesIn(new Visitor(school), "CDF34-GHJ67-KMN9P").body()).contains(TOO_MANY);
      assertThat(comesIn(new Visitor(school), code).body()).contains(TOO_MANY);
      assertThat(triesKept()).isEqualTo(CardDoor.WRONG_BY_ADDRESS);
    }

    @Test
    void noFormOfAnotherSiteBringsAnybodyIn() {
      var visitor = new Visitor(school);
      assertThat(visitor.sendsBare("/card", "code", code).statusCode()).isEqualTo(403);
      assertThat(Visitor.target(visitor.opens("/today"))).isEqualTo("/card");
    }

    @Test
    void openingTheDoorsChangesNoRow() {
      String before = rows();
      var visitor = new Visitor(school);
      for (String path :
          new String[] {"/", "/card", "/card?code=" + code, "/sign-in", "/sign-out", "/?out"}) {
        visitor.opens(path);
      }
      assertThat(rows()).isEqualTo(before);
      assertThat(Visitor.target(visitor.opens("/today"))).isEqualTo("/card");
    }

    @Test
    void whoIsInStaysInWhenTheServerStartsAnew() {
      var visitor = new Visitor(school);
      comesIn(visitor, code);
      String kept = visitor.cookie("SESSION").orElseThrow().getValue();
      school.close();
      school = RunningSchool.plain(data);
      assertThat(nobodyIsIn(kept)).isFalse();
    }
  }

  @Test
  void noCardOpensBeforeTheSessionNorAfterIt() {
    assertThat(comesIn(new Visitor(school), code).body()).contains(NOT_NOW, "value=\"" + code);
    sessions().open(teacher, session.id());
    assertThat(Visitor.target(comesIn(new Visitor(school), code))).isEqualTo("/today");
    sessions().close(teacher, session.id());
    assertThat(comesIn(new Visitor(school), code).body()).contains(NOT_NOW);
    sessions().open(teacher, session.id());
    assertThat(Visitor.target(comesIn(new Visitor(school), code))).isEqualTo("/today");
  }

  @Test
  void theWaysInLeadToOneAnother() {
    var visitor = new Visitor(school);
    assertThat(visitor.opens("/card").body()).contains("href=\"/sign-in\"");
    assertThat(visitor.opens("/sign-in").body()).contains("href=\"/card\"");
  }

  private LabSessions sessions() {
    return school.part(LabSessions.class);
  }

  private static HttpResponse<String> comesIn(Visitor visitor, String typed) {
    return visitor.sends("/card", "/card", "code", typed);
  }

  private boolean nobodyIsIn(String session) {
    var call =
        HttpRequest.newBuilder(school.at("/nothing"))
            .header("Accept", "text/html")
            .header("Cookie", "SESSION=" + session);
    return new Visitor(school).send(call.build()).statusCode() == 302;
  }

  private int triesKept() {
    var db = school.part(JdbcClient.class);
    return db.sql("select count(*) from tries").query(Integer.class).single();
  }

  private String rows() {
    var db = school.part(JdbcClient.class);
    var found = new StringBuilder();
    for (String table :
        new String[] {"people", "tries", "cards", "group_members", "audit_events"}) {
      var rows = db.sql("select * from " + table + " order by 1, 2").query().listOfRows();
      found.append(table).append(rows).append('\n');
    }
    var sessions = db.sql("select id, changes, opened_at, closed_at from lab_sessions");
    return found.append(sessions.query().listOfRows()).toString();
  }
}
