package org.holewise.school.trial;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.sheet.Shipped;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Schematics as people see them: all on one page, and each beside a board. */
class SchematicsBrowserIT extends Browser {

  private static final Pattern MARKED = Pattern.compile(".*\\bmarked\\b.*");

  /** The smallest text of a drawing, as it comes out on the screen (CSS pixels). */
  private static final String SMALLEST_TEXT =
      """
      () => Math.min(...[...document.querySelectorAll(".schematic text")]
        .filter((text) => text.checkVisibility())
        .map((text) => parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a))
      """;

  /** Less than this cannot be read on a phone. */
  private static final double READABLE = 9;

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

  @Test
  void everyExerciseIsDrawnOnOnePage() {
    var page = page(NARROWEST, ColorScheme.LIGHT);
    page.navigate(school.at("/try").toString());
    page.getByText("All schematics on one page").click();
    assertThat(page.locator(".schematic")).hasCount(Shipped.SLUGS.size());
    assertThat(((Number) page.evaluate(SMALLEST_TEXT)).doubleValue())
        .isGreaterThanOrEqualTo(READABLE);
    looksRight(page, "schematics");
  }

  @Test
  void aChoiceOnAPageOfManyStaysInItsOwnDrawing() {
    var page = page(DESK, ColorScheme.LIGHT);
    page.navigate(school.at("/schematics").toString());
    var second = page.locator("[data-schematic]").nth(1);
    second.locator("summary").click();
    second.locator("button[data-choose-ref='R1']").click();
    assertThat(second.locator(".schematic [data-ref='R1']")).hasClass(MARKED);
    assertThat(page.locator(".schematic .marked")).hasCount(1);
  }

  @Test
  void aPartOrNetIsMarkedInTheDrawingAndOnTheBoardFromTheKeyboard() {
    var page = opened("stage-cue", DESK);
    page.locator(".schematic-words > summary").press("Enter");
    page.locator("button[data-choose-net='base']").press("Enter");
    assertThat(page.locator(".schematic [data-net='base']")).hasClass(MARKED);
    assertThat(onBoard(page, ".marked[data-pin='Q1.b']")).isVisible();
    assertThat(onBoard(page, ".marked[data-pin='R1.2']")).isVisible();
    assertThat(onBoard(page, ".marked[data-pin='R1.1']")).hasCount(0);
    assertThat(said(page)).containsText("Net base: R1 2, R2 1, Q1 b. On the board: ");
    looksRight(page, "schematic-net");
    page.locator("button[data-choose-ref='Q1']").press(" ");
    assertThat(page.locator(".schematic [data-net='base']")).not().hasClass(MARKED);
    assertThat(page.locator(".schematic [data-ref='Q1']")).hasClass(MARKED);
    assertThat(onBoard(page, ".body.marked[data-ref='Q1']")).isVisible();
    looksRight(page, "schematic-part");
    page.locator("button[data-choose-ref='Q1']").press(" ");
    assertThat(page.locator(".marked")).hasCount(0);
    assertThat(said(page)).isEmpty();
  }

  @Test
  void aPartOnTheBoardIsMarkedInTheDrawingAndStaysSoWhileOneTypes() {
    var page = opened("stage-cue", DESK);
    onBoard(page, ".body[data-ref='R2']").click();
    assertThat(page.locator(".schematic [data-ref='R2']")).hasClass(MARKED);
    page.locator(".schematic [data-ref='R3'] text").first().click();
    assertThat(page.locator(".schematic [data-ref='R2']")).not().hasClass(MARKED);
    page.locator("#lines").pressSequentially("# a note");
    assertThat(page.locator("#notes")).isAttached();
    assertThat(onBoard(page, ".body.marked[data-ref='R3']")).isVisible();
  }

  @Test
  void aNetIsChosenOnTheBoardByALeadAStripOrALink() {
    var page = opened("stage-cue", DESK);
    onBoard(page, "[aria-label='b17, R1 2']").click();
    assertThat(page.locator(".schematic [data-net='base']")).hasClass(MARKED);
    assertThat(page.locator(".board-says")).containsText("Net base: ");
    clickAt(onBoard(page, ".metal[data-pins='Q1.e']"));
    assertThat(page.locator(".schematic [data-net='return']")).hasClass(MARKED);
    assertThat(page.locator(".schematic [data-net='base']")).not().hasClass(MARKED);
    onBoard(page, "[aria-label='e16, L4']").click();
    assertThat(page.locator(".schematic [data-net='collector']")).hasClass(MARKED);
    assertThat(onBoard(page, ".link-run.marked")).hasCount(1);
    looksRight(page, "schematic-from-board");
    onBoard(page, "[aria-label='e16, L4']").click();
    assertThat(page.locator(".marked")).hasCount(0);
    assertThat(page.locator(".board-says")).hasCount(0);
  }

  /** At an end of the strip, where nothing else is. */
  private static void clickAt(Locator strip) {
    var box = strip.boundingBox();
    strip.page().mouse().click(box.x + box.width / 2, box.y + box.height - 4);
  }

  @Test
  void aNetIsChosenOnTheBoardWithKeysAndOneTabStop() {
    var page = opened("stage-cue", DESK);
    assertThat(onBoard(page, ".reach[tabindex='0']")).hasCount(1);
    onBoard(page, ".reach").first().focus();
    page.keyboard().press("End");
    page.keyboard().press("ArrowLeft");
    page.keyboard().press("ArrowRight");
    page.keyboard().press("Enter");
    var last = onBoard(page, ".reach").last();
    assertThat(last).isFocused();
    assertThat(last).hasAttribute("aria-pressed", "true");
    assertThat(page.locator(".schematic [data-net='return']")).hasClass(MARKED);
    page.keyboard().press("Home");
    page.keyboard().press(" ");
    assertThat(onBoard(page, ".reach").first()).hasAttribute("aria-pressed", "true");
  }

  /** The schematic wants R1 2 on the base; in this build it is with the emitter. */
  @Test
  void theBoardGoesByWhatWasEnteredAlone() {
    var page = opened("stage-cue", DESK);
    page.locator("#lines").fill("R1 b12 b18\nQ1 d16 d17 d18\nlink c12 c20\n");
    onBoard(page, "[aria-label='b18, R1 2']").click();
    assertThat(page.locator(".schematic [data-net='base']")).hasClass(MARKED);
    assertThat(onBoard(page, ".metal.marked")).hasCount(2);
    onBoard(page, "[aria-label='c20, L1']").click();
    assertThat(page.locator(".schematic [data-net='pressed']")).hasClass(MARKED);
    assertThat(onBoard(page, ".metal[data-pins='R1.2 Q1.e']")).hasCount(1);
  }

  @Test
  void aReadingShowsWhereTheLeadsOfTheMeterGo() {
    var page = opened("stage-cue", NARROWEST);
    var row = page.locator("td:has(.where-probes)").nth(1);
    row.locator("button").press("Enter");
    assertThat(row.locator(".probing.shown .red text")).hasText("R");
    assertThat(row.locator(".probing.shown .black text")).hasText("B");
    assertThat(row.locator(".where-shown p"))
        .hasText("R: the red lead. B: the black lead. On the board: R in d17, B in d18.");
    assertThat(row.locator(".schematic"))
        .hasAttribute("aria-label", Pattern.compile("Base to emitter"));
    isAt(page, ".probing .red", "[data-pin='Q1.b'] .end");
    isAt(page, ".probing .black", "[data-pin='Q1.e'] .end");
    looksRight(page, "schematic-probes");
    row.locator("button").press("Enter");
    assertThat(row.locator(".where-shown")).hasCount(0);
    assertThat(page.locator(".board .probing")).hasCount(0);
  }

  @Test
  void aLeadThatIsNotPlacedHasNoPointOnTheBoardUntilItIs() {
    var page = opened("stage-cue", DESK);
    page.locator("#lines").fill("R1 b12 b17\n");
    var row = page.locator("td:has(.where-probes)").nth(3);
    row.locator("button").click();
    assertThat(row.locator(".where-shown p"))
        .hasText("R: the red lead. B: the black lead. Not on the board yet: R3 1, R3 2.");
    assertThat(onBoard(page, ".probing > *")).hasCount(0);
    page.locator("#lines").fill("R3 h9 h14\n");
    assertThat(row.locator(".where-shown p")).containsText("On the board: R in h9, B in h14.");
    isAt(page, ".probing .black", "[data-pin='R3.2'] .end");
  }

  private static void isAt(Page page, String mark, String hole) {
    var at = onBoard(page, mark).boundingBox();
    var end = onBoard(page, hole).boundingBox();
    assertThat(at.x + at.width / 2).isCloseTo(end.x + end.width / 2, within(1.0));
    assertThat(at.y + at.height / 2).isCloseTo(end.y + end.height / 2, within(1.0));
  }

  @Test
  void aDrawingThatIsTooWideScrollsInItsOwnBoxByKeys() {
    var page = opened("stage-chase", NARROWEST);
    var box = page.locator(".schematic-scroll");
    assertThat((boolean) box.evaluate("box => box.scrollWidth > box.clientWidth")).isTrue();
    assertFits(page);
    assertThat(page.locator("[data-more]")).isVisible();
    box.focus();
    page.keyboard().press("ArrowRight");
    page.waitForFunction("() => document.querySelector('.schematic-scroll').scrollLeft > 0");
    page.setViewportSize(DESK, page.viewportSize().height);
    assertThat(page.locator("[data-more]")).isHidden();
  }

  @Test
  void isPrintedBlackOnWhiteAndReadWithoutScripts() {
    var page =
        page(new NewContextOptions().setJavaScriptEnabled(false).setColorScheme(ColorScheme.DARK));
    page.navigate(school.at("/try/stage-cue").toString());
    assertThat(page.locator(".where-probes").first()).isHidden();
    assertThat(page.locator(".board [role='button']")).hasCount(0);
    assertThat(page.locator(".chosen-list button")).hasCount(0);
    page.locator(".schematic-words > summary").click();
    assertThat(page.locator(".chosen-list").last()).containsText("B1 +, K1 1, R3 1");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page.locator(".schematic .wire").first()).hasCSS("stroke", "rgb(0, 0, 0)");
    assertThat(page.locator(".schematic .ref").first()).hasCSS("fill", "rgb(0, 0, 0)");
    assertThat(page.locator(".card").first()).hasCSS("background-color", "rgb(255, 255, 255)");
  }

  private Page opened(String slug, int width) {
    var page = page(width, ColorScheme.LIGHT);
    page.navigate(school.at("/try/" + slug + "?start=checked").toString());
    page.locator(".asked > summary").click();
    return page;
  }

  private static Locator onBoard(Page page, String selector) {
    return page.locator("#board .board-scroll:visible " + selector);
  }

  private static Locator said(Page page) {
    return page.locator("[data-says-chosen]");
  }
}
