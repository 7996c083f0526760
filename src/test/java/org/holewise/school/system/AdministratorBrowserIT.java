package org.holewise.school.system;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.Audit;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an administrator does for the school: people, passwords, what was done, backups. */
class AdministratorBrowserIT extends Browser {

  private static final String ADMINISTRATOR = "Ada Fennimore";
  private static final String LONG_NAME = "Marigold-Eglantine Featherstonebridge-Underwoodington";
  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final String OTHER = "orange kettle beside nine benches";

  /** More than one page of them. */
  private static final int ACTS = 120;

  @Test
  void anAdministratorLooksAfterTheSchool(@TempDir Path data) {
    try (var school = RunningSchool.plain(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      var people = school.part(People.class);
      var ada = people.add(ADMINISTRATOR, Role.ADMINISTRATOR, PASSWORD);
      var teacher = people.add(LONG_NAME, Role.TEACHER, PASSWORD);
      signsIn(page, school, ADMINISTRATOR, PASSWORD);
      goesRoundByKeyboard(page);
      takesAnAccountAwayAndGivesItBack(page, school);
      staysTheLastOne(page);
      changesTheirPassword(page, school);
      seesWhatWasDone(page, school, ada, teacher);
      backsUp(page, school);
    }
  }

  private static void goesRoundByKeyboard(Page page) {
    assertThat(page.locator(".bar").boundingBox().height).isLessThan(50);
    page.locator(".brand").focus();
    page.keyboard().press("Tab");
    assertThat(page.locator(".menu > summary")).isFocused();
    page.keyboard().press("Enter");
    looksRight(page, "menu");
    page.keyboard().press("Tab");
    assertThat(page.locator(":focus")).hasText("Sessions");
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile("/sessions$"));
    assertThat(page.locator(".menu nav")).isHidden();
  }

  private static void takesAnAccountAwayAndGivesItBack(Page page, RunningSchool school) {
    page.navigate(school.at("/people").toString());
    looksRight(page, "people-few");
    page.getByRole(AriaRole.LINK, named(LONG_NAME)).click();
    looksRight(page, "person");
    page.getByLabel("First password").fill("too short");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("at least 15 characters");
    looksRight(page, "person-to-mend");
    page.getByRole(AriaRole.BUTTON, named("Take it away")).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("can no longer sign in");
    page.locator("main summary").click();
    looksRight(page, "people-gone");
    page.getByRole(AriaRole.LINK, named(LONG_NAME)).click();
    looksRight(page, "person-gone");
    page.getByLabel("First password").fill(OTHER);
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("can sign in with the new password");
  }

  private static void staysTheLastOne(Page page) {
    page.locator("main").getByRole(AriaRole.LINK, in(ADMINISTRATOR)).click();
    page.getByRole(AriaRole.BUTTON, named("Take it away")).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("it is the last administrator");
    looksRight(page, "person-last");
  }

  private static void changesTheirPassword(Page page, RunningSchool school) {
    page.navigate(school.at("/account/password").toString());
    looksRight(page, "password");
    page.getByLabel("Present password").fill(PASSWORD);
    page.getByLabel("New password", new Page.GetByLabelOptions().setExact(true)).fill(OTHER);
    page.getByLabel("New password, once more").fill("something else");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("differ");
    looksRight(page, "password-to-mend");
    page.getByLabel("Present password").fill(PASSWORD);
    page.getByLabel("New password", new Page.GetByLabelOptions().setExact(true)).fill(OTHER);
    page.getByLabel("New password, once more").fill(OTHER);
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Your password is changed");
    looksRight(page, "account-of-administrator");
  }

  private static void seesWhatWasDone(Page page, RunningSchool school, Person ada, Person teacher) {
    for (int i = 0; i < ACTS; i++) {
      school
          .part(Audit.class)
          .note(i % 2 == 0 ? ada : teacher, "signed.in", "person", teacher.id());
    }
    page.navigate(school.at("/audit").toString());
    assertThat(page.locator("tbody tr")).hasCount(100);
    looksRight(page, "audit");
    page.getByRole(AriaRole.LINK, named("Earlier")).click();
    assertThat(page.locator("tbody")).containsText("Changed their own password");
    looksRight(page, "audit-earlier");
  }

  private static void backsUp(Page page, RunningSchool school) {
    page.navigate(school.at("/backups").toString());
    assertThat(page.locator(".empty")).containsText("no backup yet");
    looksRight(page, "backups-empty");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("is made");
    looksRight(page, "backups");
    var file = page.waitForDownload(() -> page.locator("tbody a").click());
    assertThat(file.suggestedFilename()).matches(Pattern.compile("holewise-\\d{8}T\\d{9}Z\\.zip"));
  }

  private static com.microsoft.playwright.Locator.GetByRoleOptions in(String name) {
    return new com.microsoft.playwright.Locator.GetByRoleOptions().setName(name).setExact(true);
  }
}
