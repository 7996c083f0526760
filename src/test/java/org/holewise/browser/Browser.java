package org.holewise.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.running.LoggedErrors;
import org.holewise.running.Site;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/**
 * What every test in a browser starts from. Runs in the Chromium of the machine, and is skipped
 * where there is none. After each test nothing may have been complained of in a page's console: a
 * refused script or style, a missing file, an exception.
 */
@TestInstance(Lifecycle.PER_CLASS)
public abstract class Browser {

  /** The narrowest screen that pages are made for, CSS pixels (WCAG 2.2, 1.4.10 Reflow). */
  protected static final int NARROWEST = 320;

  protected static final int PHONE = 360;
  protected static final int TABLET = 768;
  protected static final int DESK = 1280;

  private static final int HEIGHT = 800;
  private static final double LONGEST_MILLIS = 20_000;

  private static final List<String> FLAGS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  /** What WCAG 2.2 AA asks for, as far as a program can tell, and what axe calls good practice. */
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  private Playwright playwright;
  private com.microsoft.playwright.Browser browser;
  private final List<BrowserContext> contexts = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();
  private final LoggedErrors errors = new LoggedErrors();

  @BeforeAll
  void startBrowser() {
    var chromium = chromium();
    assumeTrue(chromium.isPresent(), "there is no Chromium on this machine");
    // Two browsers and their schools may share two processors.
    PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_MILLIS);
    playwright = Playwright.create();
    browser =
        playwright
            .chromium()
            .launch(new LaunchOptions().setExecutablePath(chromium.get()).setArgs(FLAGS));
  }

  @AfterAll
  void stopBrowser() {
    if (playwright != null) {
      playwright.close();
    }
    errors.leave();
  }

  @BeforeEach
  void listenToTheLog() {
    errors.listen();
    errors.forget();
  }

  @AfterEach
  void nothingWasComplainedOf() {
    contexts.forEach(BrowserContext::close);
    contexts.clear();
    var found = List.copyOf(complaints);
    complaints.clear();
    assertThat(found).as(() -> "complaints; the log's errors: " + errors.said()).isEmpty();
  }

  /** A new visitor's page of that width, on a device that prefers those colours. */
  protected Page page(int width, ColorScheme colours) {
    return page(
        new com.microsoft.playwright.Browser.NewContextOptions()
            .setViewportSize(width, HEIGHT)
            .setColorScheme(colours));
  }

  /** A new visitor's page as these options say. */
  protected Page page(com.microsoft.playwright.Browser.NewContextOptions options) {
    var context = browser.newContext(options);
    contexts.add(context);
    var page = context.newPage();
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            complaints.add(page.url() + ": " + message.text());
          }
        });
    page.onPageError(error -> complaints.add(page.url() + ": " + error));
    return page;
  }

  /** Lets a page be answered with this error, which the console tells of, too. */
  protected void expectComplaint(String part) {
    assertThat(complaints).anyMatch(complaint -> complaint.contains(part));
    complaints.removeIf(complaint -> complaint.contains(part));
  }

  /** Has axe look at the page as it stands, and sees that nothing reaches beyond its sides. */
  protected static void assertAccessible(Page page) {
    assertNothingFound(axe(page).withTags(RULES));
    assertFits(page);
  }

  /** Sees that nothing reaches beyond the sides of the page. */
  protected static void assertFits(Page page) {
    assertThat(page.evaluate("document.documentElement.scrollWidth"))
        .as("width of %s", page.url())
        .isEqualTo(page.evaluate("document.documentElement.clientWidth"));
  }

  /** Keeps a picture of the whole page under {@code target/screenshots}, to be looked at. */
  protected static void keepPicture(Page page, String name) {
    page.screenshot(
        new Page.ScreenshotOptions()
            .setFullPage(true)
            .setPath(Path.of("target", "screenshots", name + ".png")));
  }

  /**
   * Looks at the page as it stands on every kind of screen, by day and by night: axe finds nothing
   * on the narrowest and the widest, nothing reaches beyond the sides of any, nor on a wide one
   * with text of twice the size (WCAG 2.2, 1.4.4 Resize Text). Keeps pictures named by width and
   * colours.
   */
  protected static void looksRight(Page page, String name) {
    page.waitForLoadState();
    var before = page.viewportSize();
    for (int width : List.of(NARROWEST, PHONE, TABLET, DESK)) {
      page.setViewportSize(width, before.height);
      assertFits(page);
      keepPicture(page, name + "-" + width + "-light");
    }
    assertNothingFound(axe(page).withTags(RULES));
    page.evaluate("document.documentElement.style.fontSize = '200%'");
    assertFits(page);
    page.evaluate("document.documentElement.style.fontSize = ''");
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
    keepPicture(page, name + "-" + DESK + "-dark");
    page.setViewportSize(NARROWEST, before.height);
    // Colours are all that differs by night.
    assertNothingFound(axe(page).withRules(List.of("color-contrast")));
    keepPicture(page, name + "-" + NARROWEST + "-dark");
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
    assertNothingFound(axe(page).withTags(RULES));
    page.setViewportSize(before.width, before.height);
  }

  /** Our pages hold no frames, so that axe may look at each in one go, which is much faster. */
  @SuppressWarnings("deprecation")
  private static AxeBuilder axe(Page page) {
    return new AxeBuilder(page).setLegacyMode(true);
  }

  private static void assertNothingFound(AxeBuilder axe) {
    var found = axe.analyze();
    assertThat(found.getPasses()).isNotEmpty();
    assertThat(found.getViolations()).extracting(Browser::told).isEmpty();
  }

  /** Unfolds the ways round the pages where a narrow screen has them behind a button. */
  protected static void openMenu(Page page) {
    var menu = page.locator(".menu > summary");
    if (menu.isVisible()) {
      menu.click();
    }
  }

  /** Exactly that accessible name. */
  protected static GetByRoleOptions named(String name) {
    return new GetByRoleOptions().setName(name).setExact(true);
  }

  /** Comes in by name and password; the page is the one that the role begins with. */
  protected static void signsIn(Page page, Site school, String name, String password) {
    page.navigate(school.at("/sign-in").toString());
    page.getByLabel("Your name").fill(name);
    page.getByLabel("Password").fill(password);
    page.locator(".primary").click();
    PlaywrightAssertions.assertThat(page.locator(".who")).containsText(name);
  }

  private static String told(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + " "
        + rule.getNodes().stream().map(n -> n.getHtml()).toList();
  }

  private static Optional<Path> chromium() {
    return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser")
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst();
  }
}
