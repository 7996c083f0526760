package org.holewise.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The look follows the device until somebody chooses, and then stays as chosen. */
class ThemeBrowserIT extends Browser {

  private static final String LIGHT_GROUND = "rgb(247, 245, 240)";
  private static final String DARK_GROUND = "rgb(18, 25, 28)";

  private RunningSchool school;

  @BeforeAll
  void start(@TempDir Path data) {
    school = RunningSchool.demo(data);
  }

  @AfterAll
  void stop() {
    if (school != null) {
      school.close();
    }
  }

  @Test
  void followsTheDevice() {
    assertThat(open(ColorScheme.LIGHT).locator("body")).hasCSS("background-color", LIGHT_GROUND);
    assertThat(open(ColorScheme.DARK).locator("body")).hasCSS("background-color", DARK_GROUND);
  }

  @Test
  void staysAsChosen() {
    var page = open(ColorScheme.LIGHT);
    var dark = page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Dark"));
    dark.click();
    assertThat(dark).hasAttribute("aria-pressed", "true");
    assertThat(page.locator("body")).hasCSS("background-color", DARK_GROUND);
    page.reload();
    assertThat(page.locator("html")).hasAttribute("data-theme", "dark");
    assertThat(page.locator("body")).hasCSS("background-color", DARK_GROUND);
    assertAccessible(page);
  }

  @Test
  void needsNoScript() {
    var page =
        page(
            new com.microsoft.playwright.Browser.NewContextOptions()
                .setJavaScriptEnabled(false)
                .setColorScheme(ColorScheme.DARK));
    page.navigate(school.at("/sign-in").toString());
    assertThat(page.locator(".themes")).isHidden();
    assertThat(page.locator("body")).hasCSS("background-color", DARK_GROUND);
  }

  @Test
  void theKeyboardReachesTheWorkFirst() {
    var page = open(ColorScheme.LIGHT);
    page.keyboard().press("Tab");
    page.keyboard().press("Enter");
    assertThat(page.locator("#work")).isFocused();
  }

  private Page open(ColorScheme colours) {
    var page = page(PHONE, colours);
    page.navigate(school.at("/sign-in").toString());
    return page;
  }
}
