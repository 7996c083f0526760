package org.holewise.school.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Classes, their students and the sheet of cards, as teachers use them. */
class RosterPagesIT {

  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final Pattern CODE = Pattern.compile("([A-Z0-9]{5}-){2}[A-Z0-9]{5}");
  private static final Pattern PICTURE =
      Pattern.compile("viewBox=\"-4 -4 (\\d+) \\d+\".*?<path class=\"qr-dark\" d=\"([^\"]+)\"");

  @TempDir private Path data;

  private RunningSchool school;
  private Visitor tom;

  @BeforeEach
  void open() {
    school = RunningSchool.plain(data);
    school.part(People.class).add("Tom", Role.TEACHER, PASSWORD);
    tom = new Visitor(school);
    tom.signsIn("Tom", PASSWORD);
  }

  @AfterEach
  void close() {
    school.close();
  }

  @Nested
  class AClass {

    @Test
    void isAddedAndListedWithTheNumberOfItsStudents() {
      assertThat(tom.opens("/classes").body()).contains("There is no class yet");
      var added = tom.sends("/classes", "/classes", "name", " 9b ");
      String page = Visitor.target(added);
      assertThat(page).isEqualTo("/classes/" + group("9b").id());
      assertThat(tom.opens(page).body()).contains("Nobody is in this class yet");
      tom.sends(page, page + "/students", "names", "Wren\nSorrel");
      assertThat(tom.opens("/classes").body())
          .containsSubsequence("9b</a>", "<td class=\"number\">2</td>");
    }

    @Test
    void needsANameOfItsOwnOfAtMost100Characters() {
      added("9b");
      assertThat(tom.sends("/classes", "/classes", "name", " ").body()).contains("Enter a name");
      assertThat(tom.sends("/classes", "/classes", "name", "9B").body())
          .contains("There is a class of this name already", "value=\"9B\"");
      String longName = "x".repeat(101);
      assertThat(tom.sends("/classes", "/classes", "name", longName).body())
          .contains("at most 100 characters", longName);
      assertThat(tom.sends("/classes", "/classes", "name", "x".repeat(100)).statusCode())
          .isEqualTo(302);
    }

    @Test
    void isRenamed() {
      String page = page(added("9b"));
      added("9c");
      assertThat(tom.sends(page, page + "/name", "name", "9c").body()).contains("already");
      assertThat(tom.sends(page, page + "/name", "name", "").body()).contains("Enter a name");
      assertThat(Visitor.target(tom.sends(page, page + "/name", "name", "9B"))).isEqualTo(page);
      assertThat(tom.opens(page).body()).contains("<h1>9B</h1>");
    }

    @Test
    void thatIsNotThereIsNotFound() {
      added("9b");
      for (String path : List.of("/classes/4711", "/classes/4711/students/1")) {
        assertThat(tom.opens(path).statusCode()).isEqualTo(404);
      }
      for (String path : List.of("/name", "/students", "/cards")) {
        assertThat(tom.sends("/classes", "/classes/4711" + path, "name", "x").statusCode())
            .isEqualTo(404);
      }
    }
  }

  @Nested
  class Names {

    @Test
    void arePastedOneALine() {
      String page = page(added("9b"));
      var answer = tom.sends(page, page + "/students", "names", "Wren\r\n\r\n Sorrel \r\nWren");
      assertThat(Visitor.target(answer)).isEqualTo(page);
      assertThat(tom.opens(page).body())
          .contains("3 students are added", "More than one student here is called: Wren");
      assertThat(names("9b")).containsExactly("Sorrel", "Wren", "Wren");
    }

    @Test
    void areAllKeptInTheBoxWhereOneIsWrong() {
      String page = page(added("9b"));
      String typed = "Wren\n\n" + "S".repeat(101) + "\n<b>Linden</b>";
      String answer = tom.sends(page, page + "/students", "names", typed).body();
      assertThat(answer)
          .contains("Line 3: this name is longer than 100 characters")
          .contains("S".repeat(101) + "\n&lt;b&gt;Linden&lt;/b&gt;");
      assertThat(names("9b")).isEmpty();
    }

    @Test
    void areAtMostSixtyAtOnce() {
      String page = page(added("9b"));
      String many = String.join("\n", Collections.nCopies(61, "Wren"));
      assertThat(tom.sends(page, page + "/students", "names", many).body()).contains("Line 61");
      assertThat(names("9b")).isEmpty();
      assertThat(tom.sends(page, page + "/students", "names", " \n").body())
          .contains("Enter at least one name");
    }

    @Test
    void areChanged() {
      var group = added("9b");
      var wren = school.part(Classes.class).addStudent(group, "Wren");
      String page = page(group) + "/students/" + wren.id();
      assertThat(tom.sends(page, page + "/name", "name", "x".repeat(101)).body())
          .contains("at most 100 characters", "x".repeat(101));
      tom.sends(page, page + "/name", "name", "Wren B.");
      assertThat(names("9b")).containsExactly("Wren B.");
    }
  }

  @Nested
  class AStudent {

    @Test
    void movesToAnotherClass() {
      var group = added("9b");
      var other = added("9c");
      var wren = school.part(Classes.class).addStudent(group, "Wren");
      String page = page(group) + "/students/" + wren.id();
      assertThat(tom.sends(page, page + "/moved", "to", "4711").statusCode()).isEqualTo(404);
      assertThat(names("9b")).containsExactly("Wren");
      tom.sends(page, page + "/moved", "to", Long.toString(other.id()));
      assertThat(names("9b")).isEmpty();
      assertThat(names("9c")).containsExactly("Wren");
      assertThat(tom.opens(page).statusCode()).isEqualTo(404);
    }

    @Test
    void isTakenOutAndPutBack() {
      var group = added("9b");
      var wren = school.part(Classes.class).addStudent(group, "Wren");
      String code = school.part(Cards.class).make(wren);
      String page = page(group) + "/students/" + wren.id();
      tom.sends(page, page + "/removed");
      assertThat(names("9b")).isEmpty();
      assertThat(school.part(Cards.class).holder(code)).isEmpty();
      assertThat(tom.opens("/classes").body()).contains("Students in no class: 1", "Wren");
      String back = "/classes/students/" + wren.id() + "/placed";
      tom.sends("/classes", back, "to", Long.toString(group.id()));
      assertThat(names("9b")).containsExactly("Wren");
      assertThat(school.part(Cards.class).holder(code)).contains(wren);
    }

    @Test
    void whomAColleagueHasPutElsewhereMeanwhileStayThere() {
      var classes = school.part(Classes.class);
      var group = added("9b");
      var wren = classes.addStudent(group, "Wren");
      String back = "/classes/students/" + wren.id() + "/placed";
      for (ClassGroup wanted : List.of(group, added("9c"))) {
        var answer = tom.sends("/classes", back, "to", Long.toString(wanted.id()));
        assertThat(Visitor.target(answer)).isEqualTo(page(group));
        assertThat(tom.opens(page(group)).body())
            .contains("Wren was put into this class meanwhile");
      }
      assertThat(classes.of(wren)).containsExactly(group);
      for (long nobody :
          new long[] {0, school.part(People.class).named("Tom").orElseThrow().id()}) {
        String path = "/classes/students/" + nobody + "/placed";
        assertThat(tom.sends("/classes", path, "to", "" + group.id()).statusCode()).isEqualTo(404);
      }
    }

    @Test
    void ofAnotherClassIsNotFoundUnderThisOne() {
      var wren = school.part(Classes.class).addStudent(added("9b"), "Wren");
      String page = page(added("9c"));
      String under = page + "/students/" + wren.id();
      assertThat(tom.opens(under).statusCode()).isEqualTo(404);
      assertThat(tom.sends(page, under + "/removed").statusCode()).isEqualTo(404);
      assertThat(names("9b")).containsExactly("Wren");
    }
  }

  @Nested
  class TheSheetOfCards {

    private ClassGroup group;
    private Person wren;
    private Person sorrel;

    @BeforeEach
    void aClass() {
      group = added("9b");
      wren = school.part(Classes.class).addStudent(group, "Wren");
      sorrel = school.part(Classes.class).addStudent(group, "Sorrel");
    }

    @Test
    void hasTheOnlyCopyOfTheNewCodes() {
      String earlier = school.part(Cards.class).make(wren);
      var sheet = makes("for", "all");
      assertThat(sheet.statusCode()).isEqualTo(200);
      assertThat(sheet.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
      var codes = codes(sheet);
      assertThat(codes).hasSize(2);
      assertThat(school.part(Cards.class).holder(codes.get(0))).contains(sorrel);
      assertThat(school.part(Cards.class).holder(codes.get(1))).contains(wren);
      assertThat(school.part(Cards.class).holder(earlier)).isEmpty();
      var kept = school.part(JdbcClient.class).sql("select code_hash from cards");
      assertThat(kept.query(String.class).list()).hasSize(2).doesNotContainAnyElementsOf(codes);
      assertThat(tom.opens(page(group)).body()).doesNotContain(codes.get(0), codes.get(1));
    }

    @Test
    void carriesPicturesThatLeadToTheDoorWithTheCodeBehindTheHash() throws Exception {
      var sheet = makes("for", "all");
      var codes = codes(sheet);
      var pictures = PICTURE.matcher(sheet.body().replaceAll("\\s+", " ")).results().toList();
      assertThat(pictures).hasSize(2);
      for (int i = 0; i < 2; i++) {
        int size = Integer.parseInt(pictures.get(i).group(1)) - 2 * QrPicture.QUIET;
        assertThat(ScannedPicture.read(size, pictures.get(i).group(2)))
            .isEqualTo(school.at("/card") + "#" + codes.get(i).replace("-", ""));
      }
    }

    @Test
    void isForWhoIsChosen() {
      var sheet = makes("for", "chosen", "student", Long.toString(wren.id()));
      assertThat(codes(sheet)).hasSize(1);
      assertThat(school.part(Cards.class).holder(codes(sheet).get(0))).contains(wren);
      assertThat(codes(makes("for", "without"))).hasSize(1);
      assertThat(makes("for", "without").body()).contains("everybody here has one");
      assertThat(makes("for", "chosen").body()).contains("tick the students first");
    }

    @Test
    void isNotForStudentsOfAnotherClass() {
      var other = school.part(Classes.class).addStudent(added("9c"), "Linden");
      var answer = makes("for", "chosen", "student", Long.toString(other.id()));
      assertThat(codes(answer)).isEmpty();
      assertThat(answer.body()).contains("tick the students first");
    }

    @Test
    void isNotMadeByOpeningAPage() {
      assertThat(tom.opens(page(group) + "/cards").statusCode()).isIn(404, 405);
      assertThat(tom.sendsBare(page(group) + "/cards", "for", "all").statusCode()).isEqualTo(403);
      assertThat(school.part(Classes.class).roll(group)).allMatch(one -> one.card().isEmpty());
    }

    private HttpResponse<String> makes(String... form) {
      return tom.sends(page(group), page(group) + "/cards", form);
    }
  }

  @Test
  void everyActIsNoted() {
    tom.sends("/classes", "/classes", "name", "9b");
    var group = group("9b");
    String page = page(group);
    tom.sends(page, page + "/name", "name", "10b");
    tom.sends(page, page + "/students", "names", "Wren");
    var wren = school.part(Classes.class).students(group).get(0);
    String student = page + "/students/" + wren.id();
    tom.sends(page, page + "/cards", "for", "all");
    tom.sends(student, student + "/name", "name", "Wren B.");
    tom.sends(student, student + "/removed");
    tom.sends("/classes", "/classes/students/" + wren.id() + "/placed", "to", "" + group.id());
    var acts = school.part(JdbcClient.class).sql("select act from audit_events order by id");
    assertThat(acts.query(String.class).list())
        .containsExactly(
            "signed.in",
            "class.added",
            "class.renamed",
            "student.added",
            "card.made",
            "student.renamed",
            "student.removed",
            "student.placed");
  }

  @Test
  void areForWhoTeaches() {
    var people = school.part(People.class);
    people.add("Tek", Role.TECHNICIAN, PASSWORD);
    people.add("Sam", Role.STUDENT, PASSWORD);
    people.add("Ada", Role.ADMINISTRATOR, PASSWORD);
    String page = page(added("9b"));
    for (String name : List.of("Tek", "Sam", "Ada")) {
      var visitor = new Visitor(school);
      visitor.signsIn(name, PASSWORD);
      int status = name.equals("Ada") ? 200 : 403;
      assertThat(visitor.opens("/classes").statusCode()).isEqualTo(status);
      assertThat(visitor.opens(page).statusCode()).isEqualTo(status);
    }
  }

  private ClassGroup added(String name) {
    return school.part(Classes.class).add(name);
  }

  private ClassGroup group(String name) {
    return school.part(Classes.class).named(name).orElseThrow();
  }

  private List<String> names(String group) {
    return school.part(Classes.class).students(group(group)).stream().map(Person::name).toList();
  }

  private static String page(ClassGroup group) {
    return "/classes/" + group.id();
  }

  private static List<String> codes(HttpResponse<String> sheet) {
    return CODE.matcher(sheet.body()).results().map(MatchResult::group).toList();
  }
}
