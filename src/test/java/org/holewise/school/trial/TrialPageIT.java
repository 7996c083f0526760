package org.holewise.school.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.sheet.Shipped;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.web.util.HtmlUtils;

/** The page as a browser without scripts sees it. */
class TrialPageIT {
  private static final String MOON = "/try/stage-moonlight";

  @TempDir static Path data;
  private static RunningSchool school;
  private final Visitor visitor = new Visitor(school);

  @BeforeAll
  static void start() {
    school = RunningSchool.demo(data);
  }

  @AfterAll
  static void stop() {
    school.close();
  }

  @Test
  void everyExerciseCanBeChosenAndStartedFrom() {
    String choose = visitor.opens("/try").body();
    for (String slug : Shipped.SLUGS) {
      assertThat(choose).contains("href=\"/try/" + slug + "\"");
      for (StartingPoint start : Shipped.starts(slug)) {
        var page = visitor.opens("/try/" + slug + "?start=" + start.name());
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(typed(page)).isEqualTo(start.lines());
        assertThat(page.body()).contains("</html>");
      }
    }
  }

  @Test
  void whatDoesNotExistIsNotFound() {
    assertThat(visitor.opens("/try/nothing").statusCode()).isEqualTo(404);
    assertThat(visitor.opens(MOON + "?start=nothing").statusCode()).isEqualTo(404);
    assertThat(visitor.sends(MOON, "/try/nothing/mark", "text", "").statusCode()).isEqualTo(404);
  }

  @Test
  void aSlipIsMarkedWithItsPlaceOnTheBoardAndInWords() {
    String lines = Shipped.lines("stage-cue", "column-off");
    String page = visitor.sends("/try/stage-cue", "/try/stage-cue/mark", "text", lines).body();
    assertThat(page).contains("What the mark says", "is a column off", "look here: b18");
    assertThat(Pattern.compile("class=\"halo\"").matcher(page).results()).hasSize(2);
    assertThat(Pattern.compile("class=\"dashed\"").matcher(page).results()).hasSize(2);
    assertThat(page).contains("56 of 60").contains("The mark in full");
  }

  @Test
  void wrongLinesAreSaidAndNothingTypedIsLost() {
    String lines = "\n  R1 b10 b15\nR9 <b>x</b> & y\n\nD1 c15\n";
    var answer = visitor.sends(MOON, MOON + "/mark", "text", lines);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(typed(answer)).isEqualTo(lines);
    assertThat(answer.body())
        .contains("Not marked yet", "data-wrong=\"3 5\"", "There is no R9 here")
        .doesNotContain("<b>x</b>")
        .doesNotContain("What the mark says");
  }

  @Test
  void checkingShowsTheBoardWithoutAMark() {
    String page = visitor.sends(MOON, MOON + "/check", "text", "R1 b10 b15").body();
    assertThat(page)
        .contains("R1 150 Ω")
        .contains("Not placed yet: P1, S1, D1")
        .doesNotContain("What the mark says", "Not marked yet");
  }

  @Test
  void theNextReadingIsAddedAsALineToFillIn() {
    String lines = Shipped.lines("stage-moonlight", "loose-lead");
    String page = visitor.sends(MOON, MOON + "/mark", "text", lines).body();
    var add = Pattern.compile("name=\"add\" value=\"([^\"]+)\"").matcher(page);
    assertThat(add.find()).isTrue();
    var answer = visitor.sends(MOON, MOON + "/check", "text", lines, "add", add.group(1));
    assertThat(typed(answer)).isEqualTo(lines + add.group(1) + " ");
    assertThat(answer.body()).doesNotContain("data-wrong");
  }

  @Test
  void theScriptIsSentOnlyWhatChanges() {
    var token = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    var found = token.matcher(visitor.opens(MOON).body());
    assertThat(found.find()).isTrue();
    String body = "text=" + encoded("R1 b10 b15\nR9") + "&_csrf=" + encoded(found.group(1));
    var answer =
        visitor.send(
            HttpRequest.newBuilder(school.at(MOON + "/check"))
                .header("X-Part", "live")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body))
                .build());
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body())
        .contains("id=\"board\"", "id=\"notes\"", "data-wrong=\"2\"")
        .doesNotContain("<html", "<textarea");
  }

  @Test
  void aFormThatWasNeverOnAPageIsTurnedAway() {
    assertThat(visitor.sendsBare(MOON + "/mark", "text", "R1 b10 b15").statusCode()).isEqualTo(403);
  }

  @Test
  void openingAnAnswersAddressLeadsBackToTheExercise() {
    assertThat(Visitor.target(visitor.opens(MOON + "/mark"))).isEqualTo(MOON);
  }

  @Test
  void pagesOfTheTrialHaveNoInlineStyleOrScript() {
    String lines = Shipped.lines("stage-dimmer", "wrong-part");
    String page =
        visitor.sends("/try/stage-dimmer", "/try/stage-dimmer/mark", "text", lines).body();
    assertThat(page).doesNotContain(" style=", "<style", " onclick", "<script>");
  }

  /** What stands in the box; a browser drops the line break right after the opening tag. */
  private static String typed(HttpResponse<String> page) {
    var box = Pattern.compile("<textarea[^>]*>\n?(.*?)</textarea>", Pattern.DOTALL);
    var found = box.matcher(page.body());
    assertThat(found.find()).isTrue();
    return HtmlUtils.htmlUnescape(found.group(1));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
