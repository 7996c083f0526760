package org.holewise.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** A school from its first start to a teacher's first token, as people see it. */
@ExtendWith(OutputCaptureExtension.class)
class PagesBrowserIT extends Browser {

  private static final String PASSWORD = "violet kettle under seven ladders";

  @ParameterizedTest
  @ValueSource(ints = {NARROWEST, DESK})
  void aSchoolIsSetUpAndATeacherGetsAToken(int width, @TempDir Path data, CapturedOutput log) {
    try (var school = RunningSchool.plain(data);
        var page = page(width, ColorScheme.LIGHT)) {
      setsUp(page, school, lastCode(log));
      page.navigate(school.at("/people").toString());
      signsIn(page, "Mara Lindqvist");
      addsATeacher(page);
      openMenu(page);
      page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Sign out")).click();
      assertThat(page.getByRole(AriaRole.STATUS)).containsText("You are signed out");
      page.navigate(school.at("/account").toString());
      signsIn(page, "Tom Okafor");
      makesAndRevokesAToken(page);
      seesWhatIsNotThere(page, school);
    }
  }

  private void setsUp(Page page, RunningSchool school, String code) {
    page.navigate(school.at("/").toString());
    assertThat(page).hasURL(Pattern.compile("/setup$"));
    looksRight(page, "set-up");
    page.getByLabel("Set-up code").fill("not the code");
    page.getByLabel("Your name").fill("Mara Lindqvist");
    page.getByLabel("Password").fill("too short");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("at least 15 characters");
    assertThat(page.getByLabel("Your name")).hasValue("Mara Lindqvist");
    assertThat(page.getByLabel("Password")).hasValue("");
    looksRight(page, "set-up-to-mend");
    page.getByLabel("Set-up code").fill(code);
    page.getByLabel("Password").fill(PASSWORD);
    primary(page).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("The school is set up");
    looksRight(page, "set-up-done");
  }

  private void signsIn(Page page, String name) {
    looksRight(page, "sign-in");
    page.getByLabel("Your name").fill(name);
    page.getByLabel("Password").fill("not this one, surely");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("do not belong together");
    assertThat(page.getByLabel("Your name")).hasValue(name);
    looksRight(page, "sign-in-refused");
    page.getByLabel("Password").fill(PASSWORD);
    primary(page).click();
    assertThat(page.locator(".who")).containsText(name);
  }

  private void addsATeacher(Page page) {
    assertThat(page).hasURL(Pattern.compile("/people"));
    page.getByLabel("Name").fill("Tom Okafor");
    page.getByLabel("Role").selectOption("TEACHER");
    page.getByLabel("First password").fill("breadboardbreadboard");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Choose another");
    looksRight(page, "people-to-mend");
    page.getByLabel("First password").fill(PASSWORD);
    primary(page).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Tom Okafor can now sign in");
    looksRight(page, "people");
  }

  private void makesAndRevokesAToken(Page page) {
    assertThat(page).hasURL(Pattern.compile("/account"));
    looksRight(page, "account-empty");
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Enter a label");
    page.getByLabel("Label").fill("lab printer");
    primary(page).click();
    assertThat(page.locator("#token")).hasText(Pattern.compile("[0-9a-f]{64}"));
    looksRight(page, "account-made");
    page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Revoke the token lab printer"))
        .click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("revoked");
    looksRight(page, "account-revoked");
  }

  private void seesWhatIsNotThere(Page page, RunningSchool school) {
    page.navigate(school.at("/nothing-here").toString());
    expectComplaint("404");
    looksRight(page, "no-such-page");
    page.navigate(school.at("/people").toString());
    expectComplaint("403");
    looksRight(page, "not-for-your-role");
  }

  private static Locator primary(Page page) {
    return page.locator(".primary");
  }

  private static String lastCode(CapturedOutput log) {
    var codes = Pattern.compile("set-up code: (\\S+)").matcher(log.getOut());
    return codes.results().reduce((first, second) -> second).orElseThrow().group(1);
  }
}
