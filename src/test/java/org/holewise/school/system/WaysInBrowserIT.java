package org.holewise.school.system;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.holewise.browser.Browser;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.roster.Cards;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ways in and the way round, as people see them. */
class WaysInBrowserIT extends Browser {

  private RunningSchool demo;
  private RunningSchool school;
  private String code;

  @BeforeAll
  void start(@TempDir Path demoData, @TempDir Path data) {
    demo = RunningSchool.demo(demoData);
    school = RunningSchool.plain(data);
    var setUp = school.part(SetUp.class);
    assertThat(setUp.complete(setUp.newCode(), "Ada", "violet kettle under seven ladders"))
        .isTrue();
    code = cardOfAClassAtWork();
  }

  @AfterAll
  void stop() {
    demo.close();
    school.close();
  }

  @Test
  void aStudentComesInWithACard() {
    var page = page(NARROWEST, ColorScheme.LIGHT);
    page.navigate(school.at("/").toString());
    looksRight(page, "ways-in");
    link(page, "Type the code").click();
    looksRight(page, "card");
    page.getByLabel("The code on your card").fill("cdf34-ghj67-kmn9p");
    button(page, "Come in").click();
    assertThat(page.getByRole(AriaRole.ALERT)).containsText("No card has this code");
    assertThat(page.getByLabel("The code on your card")).hasValue("cdf34-ghj67-kmn9p");
    looksRight(page, "card-refused");
    link(page, "I work here").click();
    looksRight(page, "sign-in-staff");
    link(page, "I am a student").click();
    page.getByLabel("The code on your card").fill(code);
    button(page, "Come in").click();
    assertThat(page).hasURL(Pattern.compile("/today$"));
  }

  @Test
  void theCodeOfAPictureIsFilledInAndSentByNobodyElse() {
    var page = page(PHONE, ColorScheme.LIGHT);
    page.navigate(school.at("/card#" + code).toString());
    assertThat(page.getByLabel("The code on your card")).hasValue(code);
    assertThat(button(page, "Come in")).isFocused();
    assertThat(page).hasURL(Pattern.compile("/card$"));
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile("/today$"));
  }

  @ParameterizedTest
  @ValueSource(ints = {NARROWEST, DESK})
  void aVisitorOfTheDemoIsOneAfterAnother(int width) {
    var page = page(width, ColorScheme.LIGHT);
    page.navigate(demo.at("/").toString());
    looksRight(page, "demo");
    for (Role role : Role.values()) {
      var act = Pattern.compile("Come in as .*" + role.name(), Pattern.CASE_INSENSITIVE);
      page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(act)).click();
      assertThat(page.locator(".who")).containsText("Demo school · as");
      page.navigate(demo.at("/nothing-here").toString());
      expectComplaint("404");
      looksRight(page, "way-round-" + role.name().toLowerCase(Locale.ROOT));
      openMenu(page);
      link(page, "Change role").click();
    }
  }

  @Test
  void theDemoNeedsNoScript() {
    var page = page(new NewContextOptions().setJavaScriptEnabled(false));
    page.navigate(demo.at("/").toString());
    button(page, "Come in as a student").click();
    assertThat(page).hasURL(Pattern.compile("/today$"));
  }

  private String cardOfAClassAtWork() {
    var teacher = school.part(People.class).addWithoutPassword("Tom", Role.TEACHER);
    ClassGroup group = school.part(Classes.class).add("9b");
    var wren = school.part(Classes.class).addStudent(group, "Wren");
    var entry = school.part(Library.class).exercises().get(0);
    var version = school.part(ExerciseVersions.class).of(entry);
    var day = LocalDate.of(2031, 3, 4);
    var sessions = school.part(LabSessions.class);
    var session = sessions.plan(teacher, new Plan(group, version, day, 2, HintStep.PART, false));
    sessions.open(teacher, session.id());
    return school.part(Cards.class).make(wren);
  }

  private static Locator link(Page page, String name) {
    return page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName(name));
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
  }
}
