package org.holewise.school.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PageAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.HandIns;
import org.junit.jupiter.api.Test;

/** The working page while the server, the network, the session or the sign-in is away. */
class AwayBrowserIT extends StudentBrowser {

  private static final long TEN_MINUTES = 600_000;

  @Test
  void putsBackWhatAClosedPageHadNotSent() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    page.route("**/entries", Route::abort);
    page.locator("[id='reading:supply']").fill("4.98 V");
    page.locator("[data-place='link'].scripted-only").click();
    page.locator("input[name^='link:'][name$=':from']").fill("a7");
    assertThat(page.locator("#saving")).containsText("No connection since");
    var later = page.context().newPage();
    page.close();
    opened(later);
    assertThat(later.locator("[id='reading:supply']")).hasValue("4.98 V");
    assertThat(later.locator("#saving")).hasText(SAVED);
    assertThat(text("reading:supply")).isEqualTo("4.98 V");
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).contains("a7");
    expectComplaint("net::ERR_FAILED");
  }

  @Test
  void handsInOnceWhenTheConnectionIsBack() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    page.locator("[id='reading:supply']").fill("5.00 V");
    assertThat(page.locator("#saving")).hasText(SAVED);
    page.context().setOffline(true);
    var button = page.locator("[formaction$='/hand-ins']");
    button.dblclick();
    assertThat(button).hasText("Kept: handed in when the connection is back");
    page.locator("#take-back").click();
    assertThat(button).hasText("Hand in");
    button.click();
    assertThat(button).hasText("Kept: handed in when the connection is back");
    page.context().setOffline(false);
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"));
    assertThat(lesson.handIns(bench)).hasSize(1);
    expectComplaint("net::ERR_INTERNET_DISCONNECTED");
  }

  @Test
  void keepsWhatIsTypedWhileSignedOut() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    page.context().clearCookies();
    page.locator("[id='reading:supply']").fill("5.02 V");
    assertThat(page.locator("#saving")).containsText("You are signed out.");
    var other = comeIn(page.context().newPage(), lesson.wren);
    assertThat(page.locator("#saving")).hasText(SAVED, patiently());
    assertThat(text("reading:supply")).isEqualTo("5.02 V");
    expectComplaint("401");
    other.close();
  }

  @Test
  void sendsAllWithinTenSecondsOfTheReturnOfAServerThatWasStopped() {
    int port = school.port();
    var page = comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren);
    page.clock().install();
    opened(page);
    school.close();
    fill(page, "reading:supply", "5.01 V");
    fill(page, "part:R1:1", "b10");
    page.clock().runFor(TEN_MINUTES);
    fill(page, "part:R1:2", "b14");
    page.clock().runFor(TEN_SECONDS);
    assertThat(page.locator("#saving")).containsText("kept on this device");
    var button = page.locator("[formaction$='/hand-ins']");
    button.click();
    page.clock().runFor(TEN_SECONDS);
    assertThat(button).hasText("Kept: handed in when the connection is back");
    school = RunningSchool.plainAt(port, data);
    page.clock().resume();
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"), longer());
    assertThat(school.part(Drafts.class).of(bench))
        .extracting(DraftEntry::name, DraftEntry::text)
        .containsExactlyInAnyOrder(
            tuple("reading:supply", "5.01 V"), tuple("part:R1", "1=b10 2=b14"));
    var handIns = school.part(HandIns.class).of(bench);
    assertThat(handIns).hasSize(1);
    assertThat(handIns.get(0).lines()).contains("R1 1=b10 2=b14", "supply 5.01 V");
    expectComplaint("net::ERR_CONNECTION_REFUSED");
  }

  @Test
  void losesNothingToAReloadInMidTyping() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    page.locator("[id='reading:supply']").pressSequentially("4.9");
    page.locator("#line").pressSequentially("R1 b10");
    page.reload();
    assertThat(page.locator("[id='reading:supply']")).hasValue("4.9");
    assertThat(page.locator("#line")).hasValue("R1 b10");
    assertThat(page.locator("#saving")).hasText(SAVED);
    assertThat(text("reading:supply")).isEqualTo("4.9");
  }

  @Test
  void keepsWhatIsTypedOnceTheSessionIsClosed() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    lesson.sessions().close(lesson.teacher, lesson.session().id());
    fill(page, "reading:supply", "5.03 V");
    assertThat(page.locator("#saving"))
        .containsText("The session is closed. What you typed is kept");
    page.reload();
    assertThat(page.locator("[id='reading:supply']")).hasValue("5.03 V");
    assertThat(page.locator("#saving"))
        .containsText("The session is closed. What you typed is kept");
    assertThat(lesson.draft(bench)).isEmpty();
    lesson.sessions().open(lesson.teacher, lesson.session().id());
    assertThat(page.locator("#saving")).hasText(SAVED, patiently());
    assertThat(text("reading:supply")).isEqualTo("5.03 V");
    expectComplaint("409");
  }

  @Test
  void savesWhereTheBrowserKeepsNothing() {
    var page = comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren);
    page.addInitScript(
        "Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); };");
    opened(page);
    fill(page, "reading:supply", "5.04 V");
    assertThat(page.locator("#saving")).hasText(SAVED);
    assertThat(text("reading:supply")).isEqualTo("5.04 V");
    page.route("**/entries", Route::abort);
    fill(page, "reading:supply", "5.05 V");
    assertThat(page.locator("#saving")).containsText("leave this page open");
    page.locator("[formaction$='/hand-ins']").click();
    assertThat(page.locator("[formaction$='/hand-ins']")).containsText("leave this page open");
    page.unroute("**/entries");
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"), longer());
    assertThat(text("reading:supply")).isEqualTo("5.05 V");
    expectComplaint("net::ERR_FAILED");
  }

  @Test
  void handsInAfterAReloadWhatWaited() {
    var page = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    page.route("**/hand-ins", Route::abort);
    fill(page, "reading:supply", "5.00 V");
    page.locator("[formaction$='/hand-ins']").click();
    var kept = "Kept: handed in when the connection is back";
    assertThat(page.locator("[formaction$='/hand-ins']")).hasText(kept);
    page.reload();
    assertThat(page.locator("[formaction$='/hand-ins']")).hasText(kept);
    assertThat(lesson.handIns(bench)).isEmpty();
    page.unroute("**/hand-ins");
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"), longer());
    assertThat(lesson.handIns(bench)).hasSize(1);
    expectComplaint("net::ERR_FAILED");
  }

  private static PageAssertions.HasURLOptions longer() {
    return new PageAssertions.HasURLOptions().setTimeout(TEN_SECONDS);
  }

  private static void fill(Page page, String field, String text) {
    page.locator("[id='" + field + "']").fill(text);
  }
}
