package org.holewise.school.roster;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A teacher's classes: from the first one to a sheet of cards. */
class ClassesBrowserIT extends Browser {

  private static final String TEACHER = "Orla Fennimore";
  private static final String PASSWORD = "violet kettle under seven ladders";
  private static final String LONG_NAME = "Marigold-Eglantine Featherstonebridge-Underwoodington";
  private static final int MANY = 28;
  private static final Path PAPER = Path.of("target", "screenshots", "cards.pdf");

  @Test
  void aTeacherAddsAClassItsStudentsAndTheirCards(@TempDir Path data) {
    try (var school = RunningSchool.plain(data);
        var page = page(NARROWEST, ColorScheme.LIGHT)) {
      school.part(People.class).add("Ada Fennimore", Role.ADMINISTRATOR, PASSWORD);
      school.part(People.class).add(TEACHER, Role.TEACHER, PASSWORD);
      signsIn(page, school, TEACHER, PASSWORD);
      addsAClass(page, school);
      pastesNames(page);
      makesCards(page);
      seesAStudent(page);
      putsAStudentBack(page, school);
    }
  }

  private static void addsAClass(Page page, RunningSchool school) {
    page.navigate(school.at("/classes").toString());
    assertThat(page.locator(".empty")).containsText("no class yet");
    looksRight(page, "classes-empty");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Enter a name");
    looksRight(page, "classes-to-mend");
    page.getByLabel("Class").fill("9 Lanterns");
    page.locator(".primary").click();
    assertThat(page.locator("h1")).hasText("9 Lanterns");
    looksRight(page, "class-empty");
  }

  private static void pastesNames(Page page) {
    String many =
        IntStream.range(0, MANY).mapToObj(i -> "Wren " + i).collect(Collectors.joining("\n"));
    String names = LONG_NAME + "\nSorrel\n" + many;
    page.getByLabel("Names, one a line").fill(names + "\n" + "x".repeat(101));
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("longer than 100 characters");
    assertThat(page.getByLabel("Names, one a line")).hasValue(names + "\n" + "x".repeat(101));
    looksRight(page, "class-to-mend");
    page.getByLabel("Names, one a line").fill(names + "\nSorrel");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("31 students are added");
    looksRight(page, "class-full");
  }

  private static void makesCards(Page page) {
    page.getByRole(AriaRole.BUTTON, named("For those ticked")).click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("tick the students first");
    looksRight(page, "class-nobody-ticked");
    page.getByRole(AriaRole.BUTTON, named("For all")).click();
    assertThat(page.locator(".door-card")).hasCount(31);
    looksRight(page, "cards");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    assertThat(page.locator(".on-screen")).isHidden();
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    assertThat(sheets(page)).isEqualTo(4);
    page.getByRole(AriaRole.LINK, named("9 Lanterns")).click();
  }

  /** On how many sheets of paper the page is printed: ten cards on each. */
  private static long sheets(Page page) {
    var printed = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true).setPath(PAPER));
    String pdf = new String(printed, StandardCharsets.ISO_8859_1);
    return Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
  }

  private static void seesAStudent(Page page) {
    page.getByRole(AriaRole.LINK, named(LONG_NAME)).click();
    assertThat(page.locator("h1")).hasText(LONG_NAME);
    looksRight(page, "student");
    page.getByLabel("Name").fill("");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("Enter a name");
    looksRight(page, "student-to-mend");
    page.getByLabel("Name").fill(LONG_NAME + " of the Old Mill Lane");
    page.locator(".primary").click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("has this name from now on");
    page.getByRole(AriaRole.LINK, named("Wren 3")).click();
    page.getByRole(AriaRole.BUTTON, named("Take out")).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Wren 3 is no longer in this class");
  }

  private static void putsAStudentBack(Page page, RunningSchool school) {
    page.navigate(school.at("/classes").toString());
    page.locator("main summary").click();
    looksRight(page, "classes-full");
    page.getByRole(AriaRole.BUTTON, named("Put Wren 3 into this class")).click();
    assertThat(page.getByRole(AriaRole.STATUS)).containsText("Wren 3 is in this class now");
  }
}
