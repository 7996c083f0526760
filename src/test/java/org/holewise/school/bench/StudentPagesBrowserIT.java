package org.holewise.school.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.Request;
import org.holewise.school.session.Bench;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page of a student on the narrowest screen: to be read by all, in both colours. */
class StudentPagesBrowserIT extends StudentBrowser {

  private static final String LONG_NAME = "Bartholomew Maximilian Featherstonehaugh-Winterbottom";

  /** Controls that lie upon each other, or whose text reaches beyond them. */
  private static final String COLLISIONS =
"""
() => {
  const seen = [...document.querySelectorAll("a, button, input, summary, label, legend")]
    .filter((one) => one.checkVisibility() && !one.closest(".unseen, svg, .board-scroll"))
    .map((one) => ({ one, box: one.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 1 && box.height > 1);
  const name = (one) => `${one.tagName} ${one.id || one.textContent.trim().slice(0, 40)}`;
  const found = [];
  seen.forEach(({ one, box }, i) => {
    if (one.tagName !== "INPUT" && one.scrollWidth > one.clientWidth + 1 && one.clientWidth) {
      found.push(`${name(one)} is cut off`);
    }
    for (const { one: other, box: its } of seen.slice(i + 1)) {
      const wide = Math.min(box.right, its.right) - Math.max(box.left, its.left);
      const high = Math.min(box.bottom, its.bottom) - Math.max(box.top, its.top);
      if (wide > 2 && high > 2 && !one.contains(other) && !other.contains(one)) {
        found.push(`${name(one)} lies on ${name(other)}`);
      }
    }
  });
  return found;
}
""";

  private Visitor wren;
  private String path;

  /** What is handed in past the pages stays unmarked. */
  @BeforeAll
  @Override
  void start(@TempDir Path data) {
    school = RunningSchool.plain(data, "--holewise.marking.every=3600000");
  }

  @Test
  void areForAllWhileTheLessonIsOn() {
    sceneOf(bench);
    var late = comeIn(page(NARROWEST, ColorScheme.LIGHT), lesson.another(LONG_NAME));
    isForAll(late, "today-choosing");
    lesson.at(1, lesson.another(LONG_NAME));
    var page = comeIn(page(NARROWEST, ColorScheme.LIGHT), lesson.wren);
    isForAll(page, "today");
    isForAll(opened(page), "bench-empty");
    BenchForm.on(wren, path).typeLayout().sendTo(path + "/gate");
    isForAll(opened(page), "bench-full");
    BenchForm.on(wren, path).type("line", "link +a5 -a5").sendTo(path + "/gate");
    page.locator("[id='part:R1:1']").fill("z99");
    page.locator("[formaction$='/hand-ins']").click();
    assertThat(page.locator("#summary")).containsText("z99");
    isForAll(page, "bench-wrong");
    expectComplaint("422");
  }

  @Test
  void areForAllWithWhatCameOfIt() {
    sceneOf(bench);
    var page = comeIn(page(NARROWEST, ColorScheme.LIGHT), lesson.wren);
    String attempt = handsInADarkMoon();
    page.navigate(school.at(attempt).toString());
    isForAll(page, "attempt");
    page.locator("#answer").fill("7 apples");
    page.locator("#answer").press("Enter");
    assertThat(page.locator("#summary")).isVisible();
    isForAll(page, "attempt-refused");
    expectComplaint("422");
    var request = Request.of("k", "R1 b10 b14");
    school
        .part(HandIns.class)
        .handIn(lesson.wren, lesson.session(), bench, request, "R1 b10 b14\n");
    page.route(Pattern.compile("/attempts/2$"), StudentPagesBrowserIT::holdStill);
    page.navigate(school.at(path + "/attempts/2").toString());
    isForAll(page, "marking");
    lesson.sessions().close(lesson.teacher, lesson.session().id());
    page.navigate(school.at(path).toString());
    assertThat(page.locator("#closed")).isVisible();
    isForAll(page, "bench-closed");
    lesson.sessions().release(lesson.teacher, lesson.session().id());
    page.navigate(school.at(attempt).toString());
    isForAll(page, "attempt-released");
    page.navigate(school.at("/today").toString());
    isForAll(page, "today-before");
  }

  @Test
  void takeTheAskedReadingFromTheKeyboardAlone() {
    sceneOf(bench);
    var page = comeIn(page(PHONE, ColorScheme.LIGHT), lesson.wren);
    page.navigate(school.at(handsInADarkMoon()).toString());
    tabTo(page, "#answer");
    page.keyboard().type("0.0 V");
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile("/attempts/1#mark$"));
    assertThat(page.locator("#mark")).containsText("Measured besides: ");
    assertThat(page.locator("#mark")).containsText("0.0 V");
    tabTo(page, ".acts .primary");
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile(path + "$"));
  }

  @Test
  void showNetsAndPointsOfReadingsOnTheBoardThatWasHandedIn() {
    sceneOf(bench);
    var page = comeIn(page(PHONE, ColorScheme.LIGHT), lesson.wren);
    page.navigate(school.at(handsInADarkMoon()).toString());
    var lead = page.locator(".board-scroll:visible .reach[aria-label$='D1 a']");
    lead.click();
    assertThat(lead).hasAttribute("aria-pressed", "true");
    assertThat(page.locator(".schematic .net.marked")).hasCount(1);
    assertThat(page.locator(".board-says")).containsText("D1 a");
    page.locator(".readouts .where-probes button").first().press("Enter");
    assertThat(page.locator(".schematic .probing.shown .red")).isVisible();
    assertThat(page.locator(".board-scroll:visible .probing .red")).hasCount(1);
    assertThat(page.locator(".board-scroll:visible .probing .black")).hasCount(1);
    isForAll(page, "attempt-chosen");
  }

  @Test
  void haveOnePrimaryActThatIsTheNextThingToDo() {
    lesson = new Lesson(school, HintStep.PLACE, true);
    sceneOf(lesson.at(1, lesson.wren));
    var page = opened(comeIn(page(PHONE, ColorScheme.LIGHT), lesson.wren));
    assertThat(page.locator("#build .primary")).hasText("Ask to switch on");
    BenchForm.on(wren, path).typeLayout().sendTo(path + "/gate");
    opened(page);
    assertThat(page.locator("#gate")).containsText("Your teacher looks first");
    assertThat(page.locator("#build .primary")).hasCount(0);
  }

  private void sceneOf(Bench at) {
    bench = at;
    path = "/bench/" + at.id();
    wren = lesson.in(lesson.wren);
  }

  private String handsInADarkMoon() {
    var answer =
        BenchForm.on(wren, path)
            .typeLayout()
            .type("reading:supply", "5.00 V", "reading:current", "0 mA", "reading:moon", "dark")
            .sendTo(path + "/hand-ins");
    return Visitor.target(answer);
  }

  /** Without the header by which a page loads itself again while it is looked at. */
  private static void holdStill(Route route) {
    var answer = route.fetch();
    var headers = new HashMap<>(answer.headers());
    headers.remove("refresh");
    route.fulfill(new Route.FulfillOptions().setResponse(answer).setHeaders(headers));
  }

  private static void isForAll(Page page, String name) {
    looksRight(page, name);
    page.evaluate("document.documentElement.style.fontSize = '200%'");
    assertFits(page);
    assertThat((List<?>) page.evaluate(COLLISIONS)).as("%s with large text", name).isEmpty();
    keepPicture(page, name + "-large");
    page.evaluate("document.documentElement.style.fontSize = ''");
  }
}
