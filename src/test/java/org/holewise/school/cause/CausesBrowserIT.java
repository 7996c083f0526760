package org.holewise.school.cause;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How often suspects were right, as a teacher sees it: before anything is known, and after some
 * weeks.
 */
class CausesBrowserIT extends Browser {

  private static final String TITLE = "How often the first suspect was right";
  private static final String PASSWORD = "violet kettle under seven ladders";

  @Test
  void saysHowItBeginsWhereNothingIsKnown(@TempDir Path data) {
    try (var school = RunningSchool.plain(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      school.part(People.class).add("Ada Fennimore", Role.ADMINISTRATOR, PASSWORD);
      signsIn(page, school, "Ada Fennimore", PASSWORD);
      page.navigate(school.at("/sessions/causes").toString());
      assertThat(page.locator(".empty")).containsText("No cause is known yet");
      assertThat(page.locator("main")).containsText("The shipped table is in use (start)");
      assertThat(page.locator(".calibration")).hasCount(0);
      looksRight(page, "causes-empty");
      page.getByRole(AriaRole.LINK, named("To the sessions")).click();
      assertThat(page).hasURL(Pattern.compile("/sessions$"));
    }
  }

  @Test
  void showsWhatWasSaidAndWhatWasSoAfterSomeWeeks(@TempDir Path data) {
    try (var school = RunningSchool.demo(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      page.navigate(school.at("/").toString());
      page.locator("form[action='/demo/as/teacher'] button").first().click();
      page.navigate(school.at("/sessions").toString());
      page.getByRole(AriaRole.LINK, named(TITLE)).click();
      assertThat(page.locator("h1")).hasText(TITLE);
      assertThat(page.locator(".right-facts dd").first()).containsText("17 by teachers, 4 by");
      assertThat(page.locator("main")).containsText("More common here than we thought: parts ");
      assertThat(page.locator("#table ~ p").first()).containsText("school-42");
      hasEachPointInItsTable(page);
      page.locator("summary", new Page.LocatorOptions().setHasText("The table in full")).click();
      looksRight(page, "causes");
    }
  }

  private static void hasEachPointInItsTable(Page page) {
    int points = page.locator(".calibration circle").count();
    assertThat(points).isGreaterThanOrEqualTo(4);
    assertThat(page.locator(".halves tbody tr")).hasCount(points);
  }
}
