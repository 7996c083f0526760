package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.holewise.school.handin.Answers;
import org.junit.jupiter.api.Test;

/** Whatever is sent to a bench, the answer says what is wrong with it, and the server goes on. */
class OddInputIT extends AtBench {

  private static final int MEGABYTE = 1024 * 1024;

  @Test
  void savesEntriesOfAScriptAndAnswersWithTheWholeDraft() {
    var saved = json(wren, entry("part:R1", "\"b10 z99\"", "0"));
    assertThat(saved.statusCode()).isEqualTo(200);
    assertThat(saved.body())
        .contains("\"revision\":1", "\"mine\":true", "\"replaced\":[]")
        .containsPattern("\"problems\":\\{\"part:R1\":\"[^\"]*z99");
    assertThat(wren.opens(path + "/entries").body())
        .contains("\"open\":true", "\"text\":\"b10 z99\"");
    assertThat(wren.opens(path + "/board").body()).contains("id=\"board\"").doesNotContain("<html");
  }

  @Test
  void tellsAScriptWhatOfAPartnerItReplaced() {
    lesson.at(1, lesson.sorrel);
    json(lesson.in(lesson.sorrel), entry("part:R1", "\"b9 b14\"", "0"));
    assertThat(json(wren, entry("part:R1", "\"b10 b14\"", "0")).body())
        .contains("\"replaced\":[{", "\"text\":\"b9 b14\"", lesson.sorrel.name());
  }

  @Test
  void namesThePlaceThatCannotBeSaved() {
    assertThat(json(wren, entry("part:R9", "\"b1\"", "0")).body())
        .contains("\"at\":\"/entries/0/name\"");
    assertThat(json(wren, entry("part:R1", "7", "0")).body()).contains("/entries/0/text");
    assertThat(json(wren, entry("part:R1", "\"b1\"", "\"x\"")).body()).contains("/entries/0/base");
    assertThat(json(wren, entry("part:R1", "\"" + "b".repeat(1001) + "\"", "0")).body())
        .contains("/entries/0/text");
    for (String body :
        List.of("", "{", "[]", "null", "{\"entries\":[]}", "{\"entries\":7}", "\u0000", "[[[[[")) {
      assertThat(json(wren, body).statusCode()).as(body).isEqualTo(400);
    }
    assertThat(lesson.draft(bench)).isEmpty();
  }

  @Test
  void tellsAScriptThatTheSessionIsClosed() {
    lesson.sessions().close(lesson.teacher, lesson.session().id());
    var answer = json(wren, entry("part:R1", "\"b1 b2\"", "0"));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("\"status\":409", "This session is closed");
    assertThat(wren.opens(path + "/entries").body()).contains("\"open\":false");
  }

  @Test
  void refusesBodiesThatAreTooLarge() {
    assertThat(json(wren, " ".repeat(MEGABYTE)).statusCode()).isEqualTo(413);
    var form = BenchForm.on(wren, path).type("reading:supply", "5".repeat(MEGABYTE));
    var answer = form.sendTo(path + "/draft");
    assertThat(answer.statusCode()).isBetween(400, 499);
    var huge = BenchForm.on(wren, path).type("reading:supply", "5".repeat(3 * MEGABYTE));
    assertThat(huge.sendTo(path + "/draft").statusCode()).isBetween(400, 499);
    var many = BenchForm.on(wren, path);
    for (int i = 0; i < 2000; i++) {
      many.type("link:x" + i + ":from", "a1");
    }
    assertThat(many.sendTo(path + "/draft").statusCode()).isBetween(400, 499);
    assertThat(lesson.draft(bench)).isEmpty();
  }

  @Test
  void keepsNoHalfCharactersAndNoControls() {
    assertThat(json(wren, entry("reading:supply", "\"5\\ud800 V\"", "0")).statusCode())
        .isIn(200, 400);
    var odd = BenchForm.on(wren, path).type("reading:supply", "5\u0000.0\n1\tV", "line", "\u0000");
    assertThat(odd.sendTo(path + "/draft").statusCode()).isLessThan(500);
    assertThat(lesson.draft(bench)).noneMatch(entry -> entry.text().matches("(?s).*\\p{Cc}.*"));
    for (String key : List.of("\u0000", "k".repeat(65), "", " ")) {
      var form = BenchForm.on(wren, path).typeLayout().type("key", key);
      assertThat(form.sendTo(path + "/hand-ins").statusCode()).as(key).isEqualTo(400);
    }
  }

  @Test
  void answersNothingWithAFaultOfItsOwn() {
    BenchForm.on(wren, path).typeLayout().sendTo(path + "/hand-ins");
    String token = BenchForm.on(wren, path).field("_csrf");
    for (String at :
        List.of("/draft", "/gate", "/hand-ins", "/help", "/attempts/1/answers", "/entries")) {
      assertThat(wren.sendsBare(path + at, "_csrf", token).statusCode()).as(at).isLessThan(500);
      assertThat(
              wren.sendsBare(
                      path + at,
                      "_csrf",
                      token,
                      "key",
                      "a",
                      "key",
                      "b",
                      "part:R1:1",
                      "a1",
                      "part:R1:1",
                      "a2",
                      "base:part:R1",
                      "9".repeat(40),
                      "back",
                      "x",
                      "out",
                      ":")
                  .statusCode())
          .as(at)
          .isLessThan(500);
    }
    for (String asked : List.of("", "volts", "volts R1.1 P1.-", "amps", "\u0000", "x when y")) {
      for (String text : List.of("", "5 V", "5", "x when night", "\u0000", "9".repeat(101))) {
        var answer =
            wren.sendsBare(
                path + "/attempts/1/answers",
                "_csrf",
                token,
                "key",
                "k" + text.length(),
                "asked",
                asked,
                "text",
                text);
        assertThat(answer.statusCode()).as(asked + "/" + text).isLessThan(500);
      }
    }
    for (String at :
        List.of(
            "/bench/" + "9".repeat(30),
            "/bench/x",
            "/bench/-1",
            path + "/attempts/0",
            path + "/attempts/" + "9".repeat(30),
            path + "/attempts/x",
            path + "/none")) {
      assertThat(wren.opens(at).statusCode()).as(at).isEqualTo(404);
      assertThat(wren.sendsBare(at + "/draft", "_csrf", token).statusCode()).isBetween(400, 499);
    }
    for (String session : List.of("9".repeat(30), "x", "0")) {
      String join = "/today/" + session + "/bench";
      assertThat(wren.sendsBare(join, "_csrf", token, "number", "1").statusCode()).isEqualTo(404);
    }
    assertThat(wren.opens(path).statusCode()).isEqualTo(200);
  }

  @Test
  void takesAnAnswerOnceAndNoneThatCannotBeRead() {
    BenchForm.on(wren, path).typeLayout().sendTo(path + "/hand-ins");
    String at = path + "/attempts/1/answers";
    String token = BenchForm.on(wren, path).field("_csrf");
    String[] asked = {"_csrf", token, "key", "k", "asked", "amps R1.1 when night", "text", "9.9"};
    assertThat(wren.sendsBare(at, asked).statusCode()).isEqualTo(422);
    asked[7] = "9.9 mA";
    assertThat(wren.sendsBare(at, asked).statusCode()).isEqualTo(303);
    assertThat(wren.sendsBare(at, asked).statusCode()).isEqualTo(303);
    asked[7] = "9.8 mA";
    assertThat(wren.sendsBare(at, asked).statusCode()).isEqualTo(409);
    var handIn = lesson.handIns(bench).get(0);
    assertThat(school.part(Answers.class).of(handIn)).hasSize(1);
    lesson.sessions().close(lesson.teacher, lesson.session().id());
    asked[3] = "other";
    var closed = wren.sendsBare(at, asked);
    assertThat(closed.statusCode()).isEqualTo(409);
    assertThat(closed.body()).contains("This session is closed");
  }
}
