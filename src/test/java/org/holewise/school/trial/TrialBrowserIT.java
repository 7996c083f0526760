package org.holewise.school.trial;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A build from the choice of its exercise to its mark, as people see it. */
class TrialBrowserIT extends Browser {

  /** Below this the board runs down the page, CSS pixels. */
  private static final int UPRIGHT = 640;

  @TempDir static Path data;
  private static RunningSchool school;

  @BeforeAll
  static void start() {
    school = RunningSchool.demo(data);
  }

  @AfterAll
  static void stop() {
    if (school != null) {
      school.close();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {NARROWEST, DESK})
  void aBuildIsTypedCheckedAndMarked(int width) {
    var page = page(width, ColorScheme.LIGHT);
    page.navigate(school.at("/try").toString());
    looksRight(page, "trial-choose");
    chooses(page, "Moonlight for the model stage");
    looksRight(page, "trial-empty");
    link(page, "the checked build").click();
    typesAWrongLine(page);
    looksRight(page, "trial-wrong");
    asksForTheMarkInVain(page);
    putsItRight(page);
    marksASlip(page);
    page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true");
    looksRight(page, "trial-marked");
  }

  @Test
  void theReadingThatIsAskedForIsAddedAndAnswered() {
    var page = page(NARROWEST, ColorScheme.LIGHT);
    page.navigate(school.at("/try/stage-moonlight?start=loose-lead").toString());
    primary(page).click();
    assertThat(page.locator(".look-here")).containsText("Look");
    looksRight(page, "trial-asks");
    button(page, "Add this line").click();
    assertThat(lines(page)).isFocused();
    assertThat(lines(page)).hasValue(Pattern.compile("\nextra \\S+ .* $"));
    page.keyboard().type("0.00 V");
    primary(page).click();
    assertThat(lines(page)).hasValue(Pattern.compile("\nextra \\S+ .* 0\\.00 V$"));
    assertThat(page.locator("#mark-title")).isVisible();
  }

  @Test
  void aBoardThatIsUsedInTwoPlacesIsDrawnInTwo() {
    var page = page(DESK, ColorScheme.LIGHT);
    page.navigate(school.at("/try/stage-dimmer?start=wrong-part").toString());
    primary(page).click();
    assertThat(board(page).locator(".edge")).hasCount(2);
    assertThat(board(page).locator(".ring").first()).isInViewport();
    looksRight(page, "trial-wide");
  }

  @Test
  void everythingWorksWithoutScripts() {
    var page =
        page(new NewContextOptions().setViewportSize(PHONE, 800).setJavaScriptEnabled(false));
    chooses(page, "A cue lamp at the press of a button");
    link(page, "a lead a column off").click();
    String typed = lines(page).inputValue() + "R9 a1 a2\n";
    lines(page).fill(typed);
    button(page, "Check the lines").click();
    assertThat(page.locator("#notes")).containsText("There is no R9 here");
    assertThat(lines(page)).hasValue(typed);
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Not marked yet");
    assertThat(lines(page)).hasValue(typed);
    lines(page).fill(typed.replace("R9 a1 a2\n", ""));
    primary(page).click();
    assertThat(page.locator(".look-here")).containsText("b18");
    assertThat(board(page).locator(".ring")).hasCount(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {640, DESK})
  void thePageHoldsWithTextOfTwiceTheSize(int width) {
    var page = page(width, ColorScheme.LIGHT);
    page.navigate(school.at("/try/stage-cue?start=column-off").toString());
    primary(page).click();
    assertThat(page.locator("#mark-title")).isVisible();
    page.evaluate("document.documentElement.style.fontSize = '200%'");
    assertThat(page.evaluate("getComputedStyle(document.body).fontSize")).isEqualTo("32px");
    assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
    keepPicture(page, "trial-large-" + width);
  }

  @Test
  void aLineThatIsNamedIsFoundByItsLink() {
    var page = page(DESK, ColorScheme.LIGHT);
    page.navigate(school.at("/try/stage-moonlight").toString());
    lines(page).fill("R1 b10 b15\nD1 c15 z9\n");
    link(page, "Line 2").click();
    assertThat(lines(page)).isFocused();
    assertThat(
            page.evaluate(
                "b => { const x = document.getElementById('lines');"
                    + " return x.value.slice(x.selectionStart, x.selectionEnd); }"))
        .isEqualTo("D1 c15 z9");
  }

  private void chooses(Page page, String title) {
    page.navigate(school.at("/").toString());
    link(page, "Try a build").click();
    assertThat(page).hasURL(Pattern.compile("/try$"));
    link(page, title).click();
    assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1))).hasText(title);
  }

  private void typesAWrongLine(Page page) {
    assertThat(board(page).locator(".body")).hasCount(4);
    lines(page).fill(lines(page).inputValue().replace("R1 b10 b15", "R9 b10 b15"));
    assertThat(page.locator("#notes")).containsText("There is no R9 here");
    assertThat(page.locator("#gutter .bad")).hasText("2");
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("There is no R9 here");
    assertThat(board(page).locator(".body")).hasCount(3);
    boolean upright = page.viewportSize().width < UPRIGHT;
    assertThat(page.locator(".board-scroll.down").isVisible()).isEqualTo(upright);
    assertThat(page.locator(".board-scroll.along").isVisible()).isEqualTo(!upright);
  }

  private void asksForTheMarkInVain(Page page) {
    String typed = lines(page).inputValue();
    primary(page).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Not marked yet");
    assertThat(lines(page)).hasValue(typed);
  }

  private void putsItRight(Page page) {
    lines(page).fill(lines(page).inputValue().replace("R9 b10 b15", "R1 b10 b15"));
    assertThat(page.locator("#gutter .bad")).hasCount(0);
    assertThat(board(page).locator(".body")).hasCount(4);
  }

  private void marksASlip(Page page) {
    String slip =
        lines(page)
            .inputValue()
            .replaceAll("across-r1 .*", "across-r1 0.00 V")
            .replaceAll("across-moon .*", "across-moon 5.01 V")
            .replaceAll("current .*", "current 0.00 mA")
            .replaceAll("moon lit", "moon dark")
            .replaceAll("switch-open .*", "switch-open 0.00 V");
    lines(page).fill(slip);
    primary(page).click();
    assertThat(page.locator(".look-here")).containsText("Look at D1");
    assertThat(board(page).locator(".ring")).hasCount(2);
    assertThat(board(page).locator(".dashed")).hasCount(2);
    assertThat(page.locator(".said")).isInViewport();
  }

  /** The drawing that is shown at this width. */
  private static Locator board(Page page) {
    String view = page.viewportSize().width < UPRIGHT ? ".down" : ".along";
    return page.locator(".board-scroll" + view + " .board");
  }

  private static Locator lines(Page page) {
    return page.locator("#lines");
  }

  private static Locator primary(Page page) {
    return page.locator(".primary");
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
  }

  private static Locator link(Page page, String name) {
    return page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName(name).setExact(true));
  }
}
