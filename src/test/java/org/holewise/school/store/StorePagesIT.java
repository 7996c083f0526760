package org.holewise.school.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The technician's pages as a browser without scripts sees them. */
class StorePagesIT {

  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final Pattern KEY = Pattern.compile("name=\"key\" value=\"([^\"]+)\"");

  private static RunningSchool school;
  private static Person technician;
  private static Person teacher;
  private static ClassGroup group;
  private static int names;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
    var people = school.part(People.class);
    people.add("Ada", Role.ADMINISTRATOR, PASSWORD);
    technician = people.add("Tek", Role.TECHNICIAN, PASSWORD);
    teacher = people.add("Tom", Role.TEACHER, PASSWORD);
    group = school.part(Classes.class).add("9 Lanterns");
    school.part(Classes.class).addStudent(group, "Sorrel Unmistakable");
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/store",
        "/store/week",
        "/store/orders",
        "/store/orders.csv",
        "/store/items/new",
        "/store/items/1/edit"
      })
  void areTheTechniciansAndTheAdministrators(String page) {
    item("Slide switch");
    assertThat(signedIn("Tek").opens(page).statusCode()).isEqualTo(200);
    assertThat(signedIn("Ada").opens(page).statusCode()).isEqualTo(200);
    assertThat(signedIn("Tom").opens(page).statusCode()).isEqualTo(403);
    assertThat(Visitor.target(new Visitor(school).opens(page))).isEqualTo("/sign-in");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/store/items/999999", "/store/items/999999/edit", "/store/sessions/999"})
  void whatIsNotThereIsNotFound(String page) {
    assertThat(signedIn("Tek").opens(page).statusCode()).isEqualTo(404);
  }

  @Test
  void anItemIsAddedAndNothingTypedIsLost() {
    var tek = signedIn("Tek");
    var refused =
        tek.sends(
            "/store/items/new",
            "/store/items",
            "label",
            "",
            "part",
            "lamp <b>6 V</b>",
            "drawer",
            "Z9",
            "minimum",
            "many",
            "pack",
            "0");
    assertThat(refused.statusCode()).isEqualTo(200);
    assertThat(refused.body())
        .contains("href=\"#label\"", "href=\"#part\"", "href=\"#minimum\"", "href=\"#pack\"")
        .contains("value=\"lamp &lt;b&gt;6 V&lt;/b&gt;\"", "value=\"Z9\"", "value=\"many\"")
        .doesNotContain("href=\"#drawer\"");
    var kept =
        tek.sends(
            "/store/items/new",
            "/store/items",
            "label",
            " Green  lamp ",
            "part",
            "LED Green",
            "drawer",
            "Z9",
            "minimum",
            "20",
            "pack",
            "50");
    var page = tek.opens(Visitor.target(kept)).body();
    assertThat(page).contains("Green lamp", "led green", "Z9", "none");
    var twice =
        tek.sends(
            "/store/items/new",
            "/store/items",
            "label",
            "Lime lamp",
            "part",
            "led green",
            "drawer",
            "Z8",
            "minimum",
            "0",
            "pack",
            "1");
    assertThat(twice.body()).contains("“Green lamp” is this part already");
    var named =
        tek.sends(
            "/store/items/new",
            "/store/items",
            "label",
            "Green lamp",
            "part",
            "",
            "drawer",
            "Z8",
            "minimum",
            "0",
            "pack",
            "1");
    assertThat(named.body()).contains("Another item has this name");
  }

  @Test
  void anItemIsChanged() {
    var item = item("Tape");
    var tek = signedIn("Tek");
    String at = "/store/items/" + item.id();
    assertThat(tek.opens(at + "/edit").body()).contains("value=\"" + item.label() + "\"");
    tek.sends(
        at + "/edit",
        at,
        "label",
        item.label() + " new",
        "part",
        "",
        "drawer",
        "Q7",
        "minimum",
        "3",
        "pack",
        "2");
    assertThat(tek.opens(at).body()).contains(item.label() + " new", "Q7");
  }

  @Test
  void aDeliveryACountAndABreakageAreInTheLedgerWithWhoAndWhy() {
    var item = item("Wire");
    String at = "/store/items/" + item.id();
    var tek = signedIn("Tek");
    sends(tek, at, at + "/delivered", 0, "delivered", "30", "delivered-note", "order of <May>");
    sends(tek, at, at + "/broken", 2, "broken", "2", "broken-note", "");
    sends(tek, at, at + "/counted", 1, "counted", "27", "shown", "28", "counted-note", "");
    var page = tek.opens(at).body();
    assertThat(page)
        .contains("order of &lt;May&gt;", "Tek", "+30", "−2", "−1")
        .contains("Counted: fewer than noted", "Broken in the store", "Delivered");
    assertThat(level(item).inStore()).isEqualTo(27);
  }

  @Test
  void aFormThatCameTwiceSaysSoAndMovesNothing() {
    var item = item("Wire");
    String at = "/store/items/" + item.id();
    var tek = signedIn("Tek");
    var form = new String[] {"key", key(tek.opens(at), 0), "delivered", "30"};
    tek.sends(at, at + "/delivered", form);
    var again = tek.sends(at, at + "/delivered", form);
    assertThat(tek.opens(Visitor.target(again)).body()).contains("This form had come before");
    assertThat(level(item).inStore()).isEqualTo(30);
  }

  @Test
  void whatCannotBeMovedIsSaidWithTheItemAndTheNumber() {
    var item = item("Wire");
    String at = "/store/items/" + item.id();
    var tek = signedIn("Tek");
    for (String typed : new String[] {"", "0", "-1", "two", "100001"}) {
      var refused = sends(tek, at, at + "/delivered", 0, "delivered", typed);
      assertThat(refused.body()).as(typed).contains("href=\"#delivered\"", "delivered-wrong");
    }
    var refused = sends(tek, at, at + "/broken", 2, "broken", "1", "broken-note", "dropped");
    assertThat(refused.body())
        .contains("There are only 0 of “" + item.label() + "”", "value=\"dropped\"");
    var overtaken = sends(tek, at, at + "/counted", 1, "counted", "5", "shown", "4");
    assertThat(overtaken.body()).contains("the store now says 0", "value=\"5\"");
    assertThat(level(item).inStore()).isZero();
  }

  @Test
  void aMistakeIsTakenBackByAnEntryOfItsOwn() {
    var item = item("Wire");
    String at = "/store/items/" + item.id();
    var tek = signedIn("Tek");
    sends(tek, at, at + "/delivered", 0, "delivered", "300");
    var link = Pattern.compile("action=\"([^\"]+/put-right)\"").matcher(tek.opens(at).body());
    assertThat(link.find()).isTrue();
    tek.sends(at, link.group(1));
    assertThat(tek.opens(at).body())
        .contains("Taken back: Delivered", "taken back later")
        .doesNotContain("put-right");
    assertThat(level(item).inStore()).isZero();
  }

  @Test
  void aFormThatWasNeverOnAPageIsTurnedAway() {
    var item = item("Wire");
    String at = "/store/items/" + item.id();
    var tek = signedIn("Tek");
    assertThat(tek.sendsBare(at + "/delivered", "delivered", "3").statusCode()).isEqualTo(403);
    assertThat(tek.sends(at, at + "/delivered", "delivered", "3").statusCode()).isEqualTo(400);
    assertThat(level(item).inStore()).isZero();
  }

  @Test
  void aSessionsKitsArePackedAndComeBack() {
    var tek = signedIn("Tek");
    var day = LocalDate.of(2041, 5, 6);
    var session = planned("stage-cue", day, 5);
    var red = existing("Red lamp", "led red");
    stock(red, 12);
    String at = "/store/sessions/" + session.id();
    var before = tek.opens(at).body();
    assertThat(before)
        .contains("Kits for 9 Lanterns", "5 benches", "830-split", "Nothing is out")
        .contains("id=\"pack-" + red.id() + "\" name=\"pack-" + red.id() + "\"")
        .contains("Not in the store’s list yet", "/store/items/new?part=resistor%2010%20k%CE%A9")
        .doesNotContain("Unmistakable");
    var tooMany = sends(tek, at, at + "/packed", 0, "pack-" + red.id(), "13");
    assertThat(tooMany.body()).contains("There are only 12 of “Red lamp”", "value=\"13\"");
    sends(tek, at, at + "/packed", 0, "pack-" + red.id(), "5", "note", "box 3");
    assertThat(tek.opens(at).body()).contains("Still out with the class", "5 out");
    var wrong =
        sends(
            tek,
            at,
            at + "/returned",
            0,
            "back-" + red.id(),
            "4",
            "used-" + red.id(),
            "1",
            "broken-" + red.id(),
            "1");
    assertThat(wrong.body()).contains("Only 5 of “Red lamp” are out with this class");
    sends(tek, at, at + "/returned", 0, "back-" + red.id(), "3", "broken-" + red.id(), "1");
    assertThat(tek.opens(at).body()).contains("1 out");
    assertThat(level(red)).isEqualTo(new Level(red, 10, 1));
    assertThat(tek.opens("/store/week?from=2041-05-06").body())
        .contains(at, "9 Lanterns: A cue lamp at the press of a button", "5 benches");
  }

  @Test
  void somethingElseIsPackedBesides() {
    var tek = signedIn("Tek");
    var session = planned("stage-cue", LocalDate.of(2041, 6, 6), 5);
    var wire = item("Wire");
    stock(wire, 12);
    String at = "/store/sessions/" + session.id();
    var nothing = sends(tek, at, at + "/packed", 0);
    assertThat(nothing.body()).contains("Enter how many for at least one item");
    var unnamed = sends(tek, at, at + "/packed", 0, "other-quantity", "3");
    assertThat(unnamed.body()).contains("Choose what else you pack", "value=\"3\"");
    sends(tek, at, at + "/packed", 0, "other", "" + wire.id(), "other-quantity", "3");
    assertThat(tek.opens(at).body()).contains("3 out");
  }

  @Test
  void thisWeekIsShownForADayThatCannotBeRead() {
    var tek = signedIn("Tek");
    for (String day : new String[] {"monday", "2031-02-30", "+999999999-12-31", "<b>"}) {
      var page = tek.opens("/store/week?from=" + URLEncoder.encode(day, StandardCharsets.UTF_8));
      assertThat(page.statusCode()).as(day).isEqualTo(200);
      assertThat(page.body()).contains("is no day that this page can read").doesNotContain("<b>“");
    }
    assertThat(tek.opens("/store/week?from=2031-03-03").body())
        .contains("from=2031-02-24", "from=2031-03-10", "3 Mar – 9 Mar 2031");
  }

  @Test
  void theStockIsSearchedByNameAndByWhatRunsOut() {
    var tek = signedIn("Tek");
    var plenty = item("Zebrawood");
    stock(plenty, 5);
    var gone = item("Zebrawood");
    var found = tek.opens("/store?name=zebraWOOD").body();
    assertThat(found).contains(plenty.label(), gone.label());
    assertThat(found.indexOf(gone.label())).isLessThan(found.indexOf(plenty.label()));
    assertThat(tek.opens("/store?name=zebrawood&low=true").body())
        .contains(gone.label())
        .doesNotContain(plenty.label());
    assertThat(tek.opens("/store?name=%3Cb%3Enothing").body())
        .contains("No item has this", "value=\"&lt;b&gt;nothing\"");
  }

  @Test
  void theOrdersAreAFileThatASpreadsheetReads() throws IOException {
    var tek = signedIn("Tek");
    var item =
        school
            .part(Items.class)
            .add(technician, new Item(0, "=1+1 \"wide\", Ω", Optional.empty(), "-A1", 7, 5));
    var answer = tek.opens("/store/orders.csv");
    assertThat(answer.headers().firstValue("Content-Type").orElse(""))
        .startsWith("text/csv;")
        .contains("charset=UTF-8", "header=present");
    assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
        .startsWith("attachment;")
        .contains(".csv");
    var rows = CSVParser.parse(answer.body().substring(1), CSVFormat.RFC4180).getRecords();
    assertThat(rows.get(0).get(0)).isEqualTo("Item");
    assertThat(rows.stream().filter(row -> row.get(0).contains("wide")).findFirst().orElseThrow())
        .containsExactly("'" + item.label(), "", "'-A1", "0", "7", "0", "5", "2", "10");
    assertThat(tek.opens("/store/orders").body()).contains("=1+1 &quot;wide&quot;, Ω");
  }

  private static Visitor signedIn(String name) {
    var visitor = new Visitor(school);
    visitor.signsIn(name, PASSWORD);
    return visitor;
  }

  /** Sends a form of the page with its hidden key, the first form's being 0. */
  private static HttpResponse<String> sends(
      Visitor who, String page, String action, int form, String... entries) {
    var all = Arrays.copyOf(entries, entries.length + 2);
    all[entries.length] = "key";
    all[entries.length + 1] = key(who.opens(page), form);
    return who.sends(page, action, all);
  }

  private static String key(HttpResponse<String> page, int form) {
    return KEY.matcher(page.body()).results().skip(form).findFirst().orElseThrow().group(1);
  }

  /** An item of a name of its own that is no part of an exercise. */
  private static Item item(String name) {
    names++;
    return school
        .part(Items.class)
        .add(technician, new Item(0, name + " no. " + names, Optional.empty(), "A1", 0, 1));
  }

  private static Item existing(String label, String part) {
    return school
        .part(Items.class)
        .add(technician, new Item(0, label, PartKey.read(part), "A1", 0, 1));
  }

  private static void stock(Item item, int quantity) {
    var line = Slip.Line.of(item.id(), Act.DELIVERED, quantity);
    var slip = new Slip(StageStore.newKey(), Optional.empty(), "", List.of(line));
    assertThat(school.part(Ledger.class).write(technician, slip)).isEqualTo(new Outcome.Kept());
  }

  private static Level level(Item item) {
    return school.part(Items.class).find(item.id()).orElseThrow();
  }

  private static LabSession planned(String slug, LocalDate day, int benches) {
    var entry = school.part(Library.class).find(slug).orElseThrow();
    var version = school.part(ExerciseVersions.class).of(entry);
    var plan = new Plan(group, version, day, benches, HintStep.PLACE, false);
    return school.part(LabSessions.class).plan(teacher, plan);
  }
}
