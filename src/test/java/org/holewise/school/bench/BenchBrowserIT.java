package org.holewise.school.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.roster.Cards;
import org.junit.jupiter.api.Test;

/** The working page of a bench as students use it: by tap, by keys, with and without a network. */
class BenchBrowserIT extends StudentBrowser {

  @Test
  void placesByTap() {
    var page =
        opened(
            page(
                new NewContextOptions()
                    .setViewportSize(PHONE, 740)
                    .setHasTouch(true)
                    .setIsMobile(true)));
    says(page, "Choose what to place next");
    choice(page, "R1").tap();
    says(page, "R1, one end: tap the hole");
    target(page, "b10").tap();
    says(page, "R1, other end: tap the hole");
    target(page, "b14").tap();
    says(page, "R1, other end: b14. Choose what to place next");
    assertThat(page.locator("#saving")).hasText(SAVED);
    assertThat(text("part:R1")).isEqualTo("1=b10 2=b14");
    assertThat(target(page, "b14")).hasAttribute("aria-label", "b14, R1, other end");
    page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Undo the last tap")).tap();
    target(page, "b15").tap();
    choice(page, "New link").tap();
    target(page, "c15").tap();
    target(page, "c18").tap();
    target(page, "b10").tap();
    says(page, "R1, one end: it is in b10");
    assertThat(page.locator("#saving")).hasText(SAVED);
    assertThat(text("part:R1")).isEqualTo("1=b10 2=b15");
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).contains("c15 c18");
    assertThat(target(page, "b10").boundingBox().width).isGreaterThanOrEqualTo(24);
  }

  @Test
  void needsNoMouse() {
    var page = page(DESK, ColorScheme.LIGHT);
    page.navigate(school.at("/card").toString());
    tabTo(page, "#code");
    page.keyboard().type(school.part(Cards.class).make(lesson.wren));
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile("/today"));
    tabTo(page, "a[href$='/bench/" + bench.id() + "']");
    page.keyboard().press("Enter");
    assertThat(target(page, "a1")).isAttached();
    tabTo(page, ".place[data-place='part:D1']");
    page.keyboard().press("Enter");
    assertThat(page.locator(":focus")).hasAttribute("role", "button");
    says(page, "D1, long lead");
    for (String key : List.of("End", "Home", "ArrowDown", "ArrowRight", "ArrowRight", "Enter")) {
      page.keyboard().press(key);
    }
    page.keyboard().press("ArrowRight");
    page.keyboard().press(" ");
    says(page, "D1, lead beside the flat: ");
    page.keyboard().press("Escape");
    assertThat(page.locator("#saving")).hasText(SAVED);
    assertThat(text("part:D1")).matches("a=\\S+ k=\\S+");
    tabTo(page, "#line");
    page.keyboard().type("supply 5.01 V");
    page.keyboard().press("Enter");
    assertThat(page.locator("[id='reading:supply']")).hasValue("5.01 V");
    tabTo(page, "[formaction$='/hand-ins']");
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"));
  }

  @Test
  void showsPartnersToEachOther() {
    var wren = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.wren));
    var sorrel = opened(comeIn(page(DESK, ColorScheme.LIGHT), lesson.sorrel));
    wren.locator("[id='reading:supply']").fill("5.01 V");
    wren.locator("[id='part:R1:1']").fill("b10");
    assertThat(wren.locator("#saving")).hasText(SAVED);
    sorrel.locator("[id='reading:supply']").fill("4.99 V");
    var note = sorrel.locator("[data-entry='reading:supply'] [data-note]");
    assertThat(note)
        .containsText("You replaced what " + lesson.wren.name() + " had entered: 5.01 V");
    assertThat(text("reading:supply")).isEqualTo("4.99 V");
    note.getByRole(AriaRole.BUTTON).click();
    assertThat(sorrel.locator("#saving")).hasText(SAVED);
    assertThat(text("reading:supply")).isEqualTo("5.01 V");
    var timeout =
        new com.microsoft.playwright.assertions.LocatorAssertions.HasValueOptions()
            .setTimeout(2 * TEN_SECONDS);
    assertThat(sorrel.locator("[id='part:R1:1']")).hasValue("b10", timeout);
  }

  @Test
  void isAccessible() {
    var page = opened(comeIn(page(NARROWEST, ColorScheme.LIGHT), lesson.wren));
    choice(page, "D1").click();
    target(page, "c14").click();
    page.locator("[id='part:R1:1']").fill("z99");
    page.locator("[id='reading:supply']").focus();
    assertThat(page.locator("[id='part:R1-problem']")).containsText("z99");
    assertThat(page.locator("#saving")).hasText(SAVED);
    looksRight(page, "bench");
  }

  @Test
  void needsNoScript() {
    var page = page(new NewContextOptions().setJavaScriptEnabled(false));
    comeIn(page, lesson.wren);
    page.navigate(school.at("/bench/" + bench.id()).toString());
    assertThat(page.locator("#placing")).isHidden();
    page.locator("[id='part:R1:1']").fill("b10");
    page.locator("[id='part:R1:2']").fill("b14");
    page.locator("[formaction$='/hand-ins']").click();
    assertThat(page).hasURL(Pattern.compile("/attempts/1$"));
    assertThat(text("part:R1")).isEqualTo("1=b10 2=b14");
  }

  private static void says(Page page, String part) {
    assertThat(page.locator("#placing [data-says]")).containsText(part);
  }

  private static Locator choice(Page page, String text) {
    return page.locator(".choice", new Page.LocatorOptions().setHasText(text));
  }
}
