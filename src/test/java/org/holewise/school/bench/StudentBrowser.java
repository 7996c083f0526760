package org.holewise.school.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.Person;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.roster.Cards;
import org.holewise.school.session.Bench;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests in a browser in which two students share a bench of a lesson of its own. */
abstract class StudentBrowser extends Browser {

  static final String SAVED = "Everything is saved.";
  static final long TEN_SECONDS = 10_000;

  Path data;
  RunningSchool school;
  Lesson lesson;
  Bench bench;

  @BeforeAll
  void start(@TempDir Path folder) {
    data = folder;
    school = RunningSchool.plain(data);
  }

  @AfterAll
  void stop() {
    if (school != null) {
      school.close();
    }
  }

  @BeforeEach
  void atABench() {
    lesson = new Lesson(school, HintStep.PLACE, false);
    lesson.at(1, lesson.wren);
    bench = lesson.at(1, lesson.sorrel);
  }

  Page comeIn(Page page, Person student) {
    page.navigate(school.at("/card").toString());
    page.getByLabel("The code on your card").fill(school.part(Cards.class).make(student));
    page.locator(".primary").click();
    assertThat(page).hasURL(Pattern.compile("/today"));
    return page;
  }

  Page opened(Page page) {
    if (page.url().equals("about:blank") && page.context().cookies().isEmpty()) {
      comeIn(page, lesson.wren);
    }
    page.navigate(school.at("/bench/" + bench.id()).toString());
    assertThat(target(page, "a1"))
        .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(2 * TEN_SECONDS));
    return page;
  }

  String text(String name) {
    return lesson.draft(bench).stream()
        .filter(entry -> entry.name().equals(name))
        .map(DraftEntry::text)
        .findFirst()
        .orElse("");
  }

  static LocatorAssertions.HasTextOptions patiently() {
    return new LocatorAssertions.HasTextOptions().setTimeout(2 * TEN_SECONDS);
  }

  static Locator target(Page page, String hole) {
    return page.locator(".target[data-hole='" + hole + "']:visible");
  }

  /** Presses Tab until the element has the focus. */
  static void tabTo(Page page, String selector) {
    for (int i = 0; i < 120; i++) {
      page.keyboard().press("Tab");
      if ((boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
        return;
      }
    }
    throw new AssertionError("Tab does not reach " + selector);
  }
}
