package org.holewise.school.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Confirmations;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.Looks;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The teacher's pages as a browser without scripts uses them, and what a spreadsheet gets. */
@TestInstance(Lifecycle.PER_CLASS)
class RoomPagesIT {

  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final int LOST = 6;

  /** Where it is tomorrow already for most of the others. */
  private static final ZoneId ZONE = ZoneId.of("Pacific/Kiritimati");

  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final String TOO_LONG = "x".repeat(1001);

  @TempDir private static Path data;

  private RunningSchool school;
  private RoomScene scene;
  private Visitor orla;
  private String at;

  @BeforeAll
  void start() {
    school = RunningSchool.plain(data, "--holewise.zone=" + ZONE);
    school.part(People.class).add("Ada", Role.ADMINISTRATOR, PASSWORD);
    Person teacher = school.part(People.class).add("Orla", Role.TEACHER, PASSWORD);
    scene = RoomScene.open(school::part, teacher, "9 Lanterns", 16, true).inEveryState();
    at = "/sessions/" + scene.session().id();
    orla = new Visitor(school);
    orla.signsIn("Orla", PASSWORD);
  }

  @AfterAll
  void stop() {
    school.close();
  }

  @Test
  void aPlanNamesEachFieldThatHasToBeMended() {
    int before = school.part(LabSessions.class).all().size();
    var answer =
        plans("group", "x", "exercise", "none", "day", "4 March", "benches", "41", "hint", "ALL");
    assertThat(mended(answer)).containsExactly("group", "exercise", "day", "benches", "hint");
    assertThat(answer.body()).contains("value=\"4 March\"", "value=\"41\"");
    assertThat(school.part(LabSessions.class).all()).hasSize(before);
  }

  @Test
  void aPlanKeepsWhatWasChosen() {
    var answer = plans("benches", "0", "lookFirst", "true", "hint", "AREA");
    assertThat(mended(answer)).containsExactly("benches");
    assertThat(answer.body())
        .containsPattern("value=\"" + scene.group.id() + "\" selected")
        .containsPattern("value=\"stage-moonlight\" selected")
        .containsPattern("value=\"AREA\" checked")
        .containsPattern("name=\"lookFirst\" value=\"true\" checked");
  }

  @Test
  void aPlanIsForYesterdayAtTheEarliestAndLessThanTwoYearsAhead() {
    var today = LocalDate.now(school.part(Clock.class));
    for (LocalDate day : List.of(today.minusDays(2), today.plusYears(2))) {
      var answer = plans("day", day.toString());
      assertThat(mended(answer)).as("%s", day).containsExactly("day");
      assertThat(answer.body()).contains("value=\"" + day + "\"");
    }
    for (LocalDate day : List.of(today.minusDays(1), today.plusYears(2).minusDays(1))) {
      assertThat(Visitor.target(plans("day", day.toString()))).matches("/sessions/\\d+");
      assertThat(school.part(LabSessions.class).all())
          .extracting(LabSession::plannedFor)
          .contains(day);
    }
  }

  @Test
  void todayIsAsTheSchoolsZoneHasIt() {
    var before = LocalDate.now(ZONE);
    String page = orla.opens("/sessions/new").body();
    assertThat(List.of(before, LocalDate.now(ZONE)))
        .anySatisfy(today -> assertThat(page).contains("value=\"" + today + "\""));
  }

  @Test
  void aLookThatIsTooLongStaysInItsField() {
    var answer = sends("/looks", "seen", TOO_LONG);
    assertThat(answer.body()).contains("Write at most 1000 characters.", ">" + TOO_LONG + "<");
    assertThat(school.part(Looks.class).of(scene.bench(LOST))).isEmpty();
  }

  @Test
  void anOverrulingNamesEachFieldAndChangesNothing() {
    var answer =
        sends("/attempts/1/overrulings", "wiring", "61", "readings", "12.5", "reason", " ");
    assertThat(mended(answer)).containsExactly("wiring", "readings", "reason");
    assertThat(answer.body())
        .contains("value=\"61\"", "value=\"12.5\"", "from 0 to 60", "from 0 to 40");
    answer = sends("/attempts/1/overrulings", "wiring", "60", "readings", "40", "reason", TOO_LONG);
    assertThat(mended(answer)).containsExactly("reason");
    assertThat(answer.body()).contains(">" + TOO_LONG + "<");
    assertThat(school.part(Overrulings.class).of(handIn(1))).isEmpty();
  }

  @Test
  void aCauseNamesEachFieldAndKeepsNothing() {
    String place = "p".repeat(201);
    var answer = sends("/attempts/1/causes", "cause", "nothing", "place", place, "note", TOO_LONG);
    assertThat(mended(answer)).containsExactly("cause", "place", "note");
    assertThat(answer.body()).contains("value=\"" + place + "\"", ">" + TOO_LONG + "<");
    assertThat(school.part(Confirmations.class).of(handIn(1))).isEmpty();
  }

  @Test
  void theSecondCauseOfAHandInStandsAboveTheFirst() {
    String page = bench(LOST) + "?attempt=2";
    String cause = code(orla.opens(page));
    assertThat(Visitor.target(sends("/attempts/2/causes", "cause", cause, "note", "first-note")))
        .isEqualTo(page);
    assertThat(orla.opens(page).body()).contains("The cause is kept.", "It was something else");
    sends("/attempts/2/causes", "cause", "touching", "place", "e5 f9", "note", "second-note");
    var confirmations = school.part(Confirmations.class);
    var second = confirmations.of(handIn(2)).orElseThrow();
    assertThat(second.note()).isEqualTo("second-note");
    assertThat(second.by()).contains(scene.teacher());
    assertThat(orla.opens(page).body())
        .contains("second-note", "e5 f9")
        .doesNotContain("first-note");
    sends("/attempts/2/causes", "cause", "nothing at all");
    assertThat(confirmations.of(handIn(2))).contains(second);
  }

  @Test
  void whatIsNotThereIsNotFound() {
    var other = RoomScene.open(school::part, scene.teacher(), "8 Lanterns", 1, false);
    for (String path :
        List.of(
            "/sessions/0",
            "/sessions/0/room",
            "/sessions/0/room/tiles",
            "/sessions/0/marks.csv",
            at + "/benches/0",
            at + "/benches/" + other.bench(1).id(),
            bench(LOST) + "?attempt=99",
            bench(LOST) + "?attempt=first")) {
      assertThat(orla.opens(path).statusCode()).as(path).isEqualTo(404);
    }
    String stranger = "" + other.students.get(0).id();
    assertThat(moves(stranger, "1").statusCode()).isEqualTo(404);
    assertThat(moves("" + scene.students.get(0).id(), "17").statusCode()).isEqualTo(404);
    assertThat(moves("" + scene.students.get(0).id(), "one").statusCode()).isEqualTo(400);
    assertThat(sends("/attempts/99/overrulings", "reason", "x").statusCode()).isEqualTo(404);
  }

  @Test
  void aStudentIsMovedToAnotherBenchAndToNone() {
    Person willow = scene.students.get(26);
    assertThat(Visitor.target(moves("" + willow.id(), "13"))).isEqualTo(at);
    assertThat(scene.bench(13).members()).contains(willow);
    assertThat(orla.opens(at).body()).contains(willow.name() + " is now at bench 13.");
    moves("" + willow.id(), "0");
    assertThat(scene.bench(13).members()).doesNotContain(willow);
    school.part(Benches.class).join(scene.session(), 14, willow);
  }

  @Test
  void aSessionIsOpenedClosedAndReleasedHoweverOftenOnePresses() {
    var other = RoomScene.open(school::part, scene.teacher(), "7 Lanterns", 1, false);
    String there = "/sessions/" + other.session().id();
    for (String act : List.of("closed", "closed", "opened", "released", "released", "withheld")) {
      assertThat(Visitor.target(orla.sends(there, there + "/" + act))).isEqualTo(there);
    }
    assertThat(other.session().isOpen()).isTrue();
    assertThat(other.session().released()).isEmpty();
  }

  @Test
  void tilesAreSentAgainOnlyWhenSomethingChanged() {
    var first = tiles("");
    assertThat(first.body()).contains("id=\"tiles\"", "Asks for help");
    // The minute is part of the tag: at its end the tiles are new once.
    var again = IntStream.range(0, 3).mapToObj(i -> tiles(etag(tiles("")))).toList();
    assertThat(again)
        .filteredOn(answer -> answer.statusCode() == 304)
        .hasSizeGreaterThanOrEqualTo(2)
        .allSatisfy(answer -> assertThat(answer.body()).isEmpty());
    school.part(Looks.class).add(scene.teacher(), scene.bench(13), "");
    var changed = tiles(etag(first));
    assertThat(changed.statusCode()).isEqualTo(200);
    assertThat(etag(changed)).isNotEqualTo(etag(first)).isNotEmpty();
  }

  @Test
  void tilesThatDidNotChangeAreNotRead() {
    int sent = statements("\"none\"");
    assertThat(sent).isBetween(5, 7);
    // As above: of two that follow each other, one at most begins a minute.
    int same = Math.min(statements(etag(tiles(""))), statements(etag(tiles(""))));
    assertThat(same).isZero();
  }

  /** How many statements ask after a session's benches when its tiles are. */
  private int statements(String tag) {
    var db = school.part(JdbcClient.class);
    db.sql("set query_statistics true").update();
    try {
      assertThat(tiles(tag).statusCode()).isIn(200, 304);
      return db.sql(
              """
              select coalesce(sum(execution_count), 0) from information_schema.query_statistics
              where sql_statement like '%benches%' and sql_statement not like '%statistics%'
              """)
          .query(Integer.class)
          .single();
    } finally {
      db.sql("set query_statistics false").update();
    }
  }

  @Test
  void marksAreATableThatASpreadsheetReads() throws IOException {
    var names = List.of("=1+1", "Wren, \"the lamp\"", "Søren Ωmega");
    var classes = school.part(Classes.class);
    var other = RoomScene.open(school::part, scene.teacher(), "6 Lanterns, Ω", 2, false);
    names.forEach(name -> classes.addStudent(other.group, name));
    other.sitDown(1);
    HandIn handIn = other.handsIn(1, other.columnOffLines());
    String reason = "-2 for the lamp, \"as agreed\"\nin class";
    school.part(Overrulings.class).add(scene.teacher(), handIn, 50, 38, reason);
    var answer = orla.opens("/sessions/" + other.session().id() + "/marks.csv");
    assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
        .startsWith("attachment;");
    var rows = read(answer);
    assertThat(rows).hasSize(other.students.size() + names.size());
    assertThat(rows)
        .extracting(row -> row.get("student"))
        .contains("'=1+1")
        .containsAll(names.subList(1, 3));
    for (int student : List.of(0, 1)) {
      var row = of(rows, other.students.get(student));
      assertThat(row.get("class")).isEqualTo("6 Lanterns, Ω");
      assertThat(numbers(row, "bench", "attempts", "wiring", "readings", "total", "of"))
          .containsExactly(1, 1, 50, 38, 88, 100);
      assertThat(row.get("reason")).isEqualTo("'" + reason);
      assertThat(row.get("overruled")).isEqualTo("yes");
      assertThat(row.get("handed in at")).isEqualTo(TIME.format(handIn.at().atZone(ZONE)));
    }
    assertThat(of(rows, other.students.get(2)).toList().subList(5, 14))
        .containsExactly("0", "", "", "", "", "", "", "", "");
  }

  private static List<CSVRecord> read(HttpResponse<String> answer) throws IOException {
    assertThat(answer.body()).startsWith("\uFEFF");
    var format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return CSVParser.parse(answer.body().substring(1), format).getRecords();
  }

  private static CSVRecord of(List<CSVRecord> rows, Person student) {
    return rows.stream()
        .filter(row -> row.get("student").equals(student.name()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Integer> numbers(CSVRecord row, String... columns) {
    return List.of(columns).stream().map(row::get).map(Integer::valueOf).toList();
  }

  private HttpResponse<String> tiles(String tag) {
    return orla.send(
        HttpRequest.newBuilder(school.at(at + "/room/tiles"))
            .header("If-None-Match", tag.isEmpty() ? "\"none\"" : tag)
            .build());
  }

  private static String etag(HttpResponse<String> answer) {
    return answer.headers().firstValue("ETag").orElse("");
  }

  /** Sends the form of a plan, right but for these entries. */
  private HttpResponse<String> plans(String... entries) {
    var form = new LinkedHashMap<String, String>();
    form.put("group", "" + scene.group.id());
    form.put("exercise", "stage-moonlight");
    form.put("day", LocalDate.now(school.part(Clock.class)).toString());
    form.put("benches", "3");
    form.put("hint", "PART");
    for (int i = 0; i < entries.length; i += 2) {
      form.put(entries[i], entries[i + 1]);
    }
    var flat =
        form.entrySet().stream().flatMap(entry -> Stream.of(entry.getKey(), entry.getValue()));
    return orla.sends("/sessions/new", "/sessions", flat.toArray(String[]::new));
  }

  /** Sends a form of the page of the bench that is lost. */
  private HttpResponse<String> sends(String action, String... form) {
    return orla.sends(bench(LOST), bench(LOST) + action, form);
  }

  private HttpResponse<String> moves(String student, String number) {
    return orla.sends(at, at + "/members", "student", student, "number", number);
  }

  private String bench(int number) {
    return at + "/benches/" + scene.bench(number).id();
  }

  private HandIn handIn(int number) {
    return school.part(HandIns.class).find(scene.bench(LOST), number).orElseThrow();
  }

  /** The fields that the summary of what has to be mended leads to; each is on the page. */
  private static List<String> mended(HttpResponse<String> page) {
    assertThat(page.statusCode()).isEqualTo(200);
    String summary = page.body().replaceFirst("(?s).*?role=\"alert\"(.*?)</ul>.*", "$1");
    var fields =
        Pattern.compile("href=\"#([^\"]+)\"")
            .matcher(summary)
            .results()
            .map(found -> found.group(1))
            .toList();
    fields.forEach(field -> assertThat(page.body()).contains("id=\"" + field + "\""));
    return fields;
  }

  /** The first cause that the form offers. */
  private static String code(HttpResponse<String> page) {
    return page.body().replaceFirst("(?s).*?<optgroup.*?<option value=\"([^\"]+)\".*", "$1");
  }
}
