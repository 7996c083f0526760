package org.holewise.school.store;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A technician's week: an empty store, then kits for a class, and what to order. */
class StoreBrowserIT extends Browser {

  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final int MANY = 45;

  @Test
  void aTechnicianStocksPacksTakesBackAndOrders(@TempDir Path data) {
    try (var school = RunningSchool.plain(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      var people = school.part(People.class);
      people.add("Ada Fennimore", Role.ADMINISTRATOR, PASSWORD);
      var technician = people.add("Tamar Quill", Role.TECHNICIAN, PASSWORD);
      var teacher = people.add("Orla Fennimore", Role.TEACHER, PASSWORD);
      comesIn(page, school);
      seesAnEmptyStore(page, school);
      var session = planned(school, teacher);
      seesWhatIsNotListed(page, school);
      school.part(StoreScene.class).lay(technician);
      addsManyItems(school, technician);
      seesAFullStore(page, school);
      keepsALedger(page);
      packs(page, school, session);
      orders(page, school);
    }
  }

  private static void comesIn(Page page, RunningSchool school) {
    signsIn(page, school, "Tamar Quill", PASSWORD);
    assertThat(page.locator("h1")).hasText("The stock");
  }

  private static void seesAnEmptyStore(Page page, RunningSchool school) {
    looksRight(page, "store-stock-empty");
    link(page, "Week");
    assertThat(page.locator(".empty")).isVisible();
    looksRight(page, "store-week-empty");
    link(page, "Orders");
    looksRight(page, "store-orders-empty");
    page.navigate(school.at("/store").toString());
    link(page, "Add an item");
    page.getByLabel("In a pack").fill("a few");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Enter a name");
    assertThat(page.getByLabel("In a pack")).hasValue("a few");
    looksRight(page, "store-item-to-mend");
  }

  private static void seesWhatIsNotListed(Page page, RunningSchool school) {
    page.navigate(school.at("/store/week").toString());
    looksRight(page, "store-week-unlisted");
    page.getByRole(AriaRole.LINK, named("Add to the list: LED blue")).click();
    assertThat(page.getByLabel("Part of exercises")).hasValue("led blue");
    assertThat(page.getByLabel("Name")).hasValue("LED blue");
    looksRight(page, "store-item-new");
  }

  private static void seesAFullStore(Page page, RunningSchool school) {
    page.navigate(school.at("/store").toString());
    looksRight(page, "store-stock-full");
    page.getByLabel("Name, drawer or part").fill("resistor 2.2");
    page.getByRole(AriaRole.BUTTON, named("Search")).click();
    // The resistor, and the photoresistor of that value.
    assertThat(page.locator("tbody tr")).hasCount(2);
    looksRight(page, "store-stock-found");
    link(page, "Resistor 2.2 kΩ");
  }

  private static void keepsALedger(Page page) {
    assertThat(page.locator("h1")).hasText("Resistor 2.2 kΩ");
    page.getByLabel("How many broke").fill("500");
    page.getByRole(AriaRole.BUTTON, named("Take out as broken")).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("There are only 22");
    assertThat(page.getByLabel("How many broke")).hasValue("500");
    looksRight(page, "store-ledger-to-mend");
    page.getByLabel("How many came").fill("100");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("in the ledger");
    page.getByLabel("How many lie in the drawer").fill("118");
    page.getByRole(AriaRole.BUTTON, named("Set to this count")).click();
    page.getByRole(AriaRole.BUTTON, named("Take back: Counted: fewer than noted, 4")).click();
    assertThat(page.locator("dd").first()).containsText("122");
    looksRight(page, "store-ledger");
  }

  private static void packs(Page page, RunningSchool school, LabSession session) {
    page.navigate(school.at("/store/week").toString());
    looksRight(page, "store-week");
    page.navigate(school.at("/store/sessions/" + session.id()).toString());
    looksRight(page, "store-session");
    page.getByLabel("To pack").first().fill("lots");
    page.getByRole(AriaRole.BUTTON, named("Note as packed")).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("“lots” is not a number");
    looksRight(page, "store-session-to-mend");
    page.navigate(school.at("/store/sessions/" + session.id()).toString());
    page.getByLabel("Broken").first().fill("2");
    page.getByLabel("Back").first().fill("10");
    page.getByRole(AriaRole.BUTTON, named("Note what came back")).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("in the ledger");
    assertThat(page.locator("main")).containsText("3 out");
  }

  private static void orders(Page page, RunningSchool school) {
    page.navigate(school.at("/store/orders").toString());
    assertThat(page.locator("tbody")).containsText("Push button, four leads");
    looksRight(page, "store-orders");
  }

  private static void addsManyItems(RunningSchool school, Person technician) {
    String longest = "Reel of hook-up wire for benches, stripped at both ends by hand, ";
    for (int i = 0; i < MANY; i++) {
      String name = (i == 0 ? longest + "X".repeat(100 - longest.length()) : "Spare no. " + i);
      school
          .part(Items.class)
          .add(technician, new Item(0, name, Optional.empty(), "Cupboard " + i, 0, 1));
    }
  }

  private static LabSession planned(RunningSchool school, Person teacher) {
    var group = school.part(Classes.class).add("9 Lanterns");
    var versions = school.part(ExerciseVersions.class);
    var library = school.part(Library.class);
    var today = LocalDate.now(school.part(Clock.class));
    var moonlight = versions.of(library.find("stage-moonlight").orElseThrow());
    var dimmer = versions.of(library.find("stage-dimmer").orElseThrow());
    var sessions = school.part(LabSessions.class);
    var packed =
        sessions.plan(teacher, new Plan(group, moonlight, today, 15, HintStep.PLACE, false));
    sessions.plan(teacher, new Plan(group, dimmer, today, 24, HintStep.PLACE, false));
    return packed;
  }

  private static void link(Page page, String name) {
    page.getByRole(AriaRole.LINK, named(name)).click();
  }
}
