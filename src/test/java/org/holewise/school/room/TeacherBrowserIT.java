package org.holewise.school.room;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.roster.ClassGroup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A teacher's lesson, from its plan to its marks. */
class TeacherBrowserIT extends Browser {

  private static final String TEACHER = "Orla Fennimore";
  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final String CLASS = "9 Lanterns, Tuesdays with the stage crew of the village";
  private static final int LOST_BENCH = 6;

  @Test
  void aTeacherPlansALessonWalksTheRoomAndMarksIt(@TempDir Path data) throws IOException {
    try (var school = RunningSchool.plain(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      school.part(People.class).add("Ada Fennimore", Role.ADMINISTRATOR, PASSWORD);
      var teacher = school.part(People.class).add(TEACHER, Role.TEACHER, PASSWORD);
      signsIn(page, school, TEACHER, PASSWORD);
      seesThatThereIsNoClass(page, school);
      var group = RoomScene.aClass(school::part, CLASS);
      plans(page, school);
      var scene = opens(page, school, teacher, group);
      seesTheRoomFillByItself(page, scene);
      looksAtABench(page);
      overrules(page);
      confirmsTheCause(page);
      seesWhatWasNotHandedIn(page);
      moves(page, scene);
      releasesAndCloses(page);
      seesTheSessionAmongThePast(page, school);
    }
  }

  private static void seesThatThereIsNoClass(Page page, RunningSchool school) {
    assertThat(page).hasURL(Pattern.compile("/sessions$"));
    assertThat(page.locator(".empty")).containsText("Add the class");
    looksRight(page, "sessions-no-class");
    page.navigate(school.at("/sessions/new").toString());
    looksRight(page, "plan-no-class");
  }

  private static void plans(Page page, RunningSchool school) {
    page.navigate(school.at("/sessions").toString());
    assertThat(page.locator(".empty")).containsText("no session yet");
    looksRight(page, "sessions-empty");
    link(page, "Plan a session");
    looksRight(page, "plan");
    page.getByLabel("Benches", exactly()).fill("a few");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Choose the class");
    assertThat(page.getByLabel("Benches", exactly())).hasValue("a few");
    looksRight(page, "plan-to-mend");
    page.getByLabel("Class", exactly()).selectOption(CLASS);
    page.getByLabel("Exercise", exactly()).selectOption("stage-moonlight");
    page.getByLabel("Benches", exactly()).fill("16");
    page.getByLabel("I look at each bench before it switches on").check();
    primary(page).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("The session is planned");
    looksRight(page, "session-planned");
  }

  private static RoomScene opens(
      Page page, RunningSchool school, Person teacher, ClassGroup group) {
    link(page, "The room");
    assertThat(page.locator("main")).containsText("Not open yet");
    looksRight(page, "room-planned");
    page.goBack();
    button(page, "Open the session").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("The session is open");
    looksRight(page, "session-open");
    var number = Pattern.compile("/sessions/(\\d+)").matcher(page.url());
    assertThat(number.find()).isTrue();
    return new RoomScene(school::part, teacher, group, Long.parseLong(number.group(1)));
  }

  private static void seesTheRoomFillByItself(Page page, RoomScene scene) {
    link(page, "The room");
    assertThat(page.locator(".tile")).hasCount(16);
    assertThat(page.locator(".tally")).hasText("Nobody needs you now");
    looksRight(page, "room-empty");
    scene.inEveryState();
    assertThat(page.locator(".tile").first()).containsText("Asks for help");
    assertThat(page.locator("#told")).containsText("Bench 11: Asks for help");
    looksRight(page, "room-full");
  }

  private static void looksAtABench(Page page) {
    page.locator("#bench-" + LOST_BENCH).click();
    assertThat(page.locator("h1")).hasText("Bench " + LOST_BENCH);
    assertThat(page.locator("[aria-current=true]").last()).containsText("Hand-in 3");
    looksRight(page, "bench-handed-in");
    choosesANetOnTheBoard(page);
    page.getByLabel("What you saw").fill("x".repeat(1001));
    primary(page).click();
    assertThat(page.locator("#seen-wrong")).containsText("at most 1000 characters");
    assertThat(page.getByLabel("What you saw")).hasValue("x".repeat(1001));
    looksRight(page, "bench-look-to-mend");
    page.getByLabel("What you saw").fill("The lamp is one column off; they see it now.");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Your look is noted");
    assertThat(page.locator("#visits + .history")).containsText("one column off");
  }

  private static void choosesANetOnTheBoard(Page page) {
    var lead = page.locator(".board-scroll:visible .reach[aria-label$='R1 1']");
    lead.press("Enter");
    assertThat(lead).hasAttribute("aria-pressed", "true");
    assertThat(page.locator(".schematic .net.marked")).hasCount(1);
    page.locator("summary", new Page.LocatorOptions().setHasText("Readings")).click();
    page.locator(".readouts .where-probes button").first().press("Enter");
    assertThat(page.locator(".board-scroll:visible .probing > *")).not().hasCount(0);
    looksRight(page, "bench-chosen");
    lead.press("Enter");
    assertThat(page.locator(".marked")).hasCount(0);
  }

  private static void overrules(Page page) {
    var form = page.locator("#overrule");
    form.getByLabel("Wiring").fill("1000");
    button(page, "Overrule the marks").click();
    assertThat(form.getByRole(AriaRole.ALERT)).containsText("Say why");
    assertThat(form.getByLabel("Wiring")).hasValue("1000");
    assertThat(form.locator("#wiring-wrong")).containsText("from 0 to 60");
    looksRight(page, "bench-overruling-to-mend");
    form.getByLabel("Wiring").fill("58");
    form.getByLabel("Reason").fill("Explained at the bench where the lamp belongs.");
    button(page, "Overrule the marks").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Your marks are kept");
    assertThat(page.locator(".overrulings")).containsText("Explained at the bench");
    looksRight(page, "bench-overruled");
  }

  private static void confirmsTheCause(Page page) {
    var form = page.locator("#confirm");
    form.getByLabel("Note").fill("found by ohmmeter");
    button(page, "Confirm this cause").click();
    assertThat(form.getByRole(AriaRole.ALERT)).containsText("Choose what it was");
    assertThat(form.getByLabel("Note")).hasValue("found by ohmmeter");
    looksRight(page, "bench-cause-to-mend");
    form.getByLabel("What it was").selectOption(form.locator("option").nth(1).elementHandle());
    button(page, "Confirm this cause").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("The cause is kept");
    assertThat(form).containsText("found by ohmmeter");
    looksRight(page, "bench-confirmed");
  }

  private static void seesWhatWasNotHandedIn(Page page) {
    link(page, "The room, " + CLASS);
    page.locator("#bench-11").click();
    assertThat(page.locator("main")).containsText("They asked for help");
    looksRight(page, "bench-asks");
    button(page, "Help is given").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("has ended");
    link(page, "The room, " + CLASS);
    page.locator("#bench-12").click();
    assertThat(page.locator("main")).containsText("Not");
    looksRight(page, "bench-draft");
    link(page, "The room, " + CLASS);
    page.locator("#bench-16").click();
    looksRight(page, "bench-free");
    link(page, "The room, " + CLASS);
  }

  private static void moves(Page page, RoomScene scene) {
    page.locator("main a").first().click();
    assertThat(page.locator("#stumbles ~ .stumbles li").first()).containsText("Bench");
    looksRight(page, "session-full");
    page.getByLabel("Student", exactly()).selectOption(String.valueOf(scene.students.get(0).id()));
    page.getByLabel("To", exactly()).selectOption("16");
    button(page, "Move").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Wren is now at bench 16");
  }

  private static void releasesAndCloses(Page page) throws IOException {
    button(page, "Release results").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Students now see their results");
    var file = page.waitForDownload(() -> link(page, "Marks as a table (CSV)"));
    assertThat(file.suggestedFilename()).startsWith("marks-9-lanterns").endsWith(".csv");
    assertThat(Files.readString(file.path())).contains("Explained at the bench where the lamp");
    button(page, "Close it").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("The session is closed");
    looksRight(page, "session-closed");
    link(page, "The room");
    assertThat(page.locator("main")).containsText("Closed: nobody can hand in");
    looksRight(page, "room-closed");
  }

  private static void seesTheSessionAmongThePast(Page page, RunningSchool school) {
    page.navigate(school.at("/sessions").toString());
    assertThat(page.locator("#past ~ ul li")).containsText("results shown");
    looksRight(page, "sessions-past");
  }

  private static void link(Page page, String name) {
    page.getByRole(AriaRole.LINK, named(name)).click();
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(AriaRole.BUTTON, named(name));
  }

  private static Locator primary(Page page) {
    return page.locator(".primary");
  }

  private static Page.GetByLabelOptions exactly() {
    return new Page.GetByLabelOptions().setExact(true);
  }
}
