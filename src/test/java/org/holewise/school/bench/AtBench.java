package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.session.Bench;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Tests of one running school, each with a lesson of its own in which Wren sits at a bench. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class AtBench {

  private static final Pattern TOKEN = Pattern.compile("name=\"csrf\" content=\"([^\"]+)\"");

  RunningSchool school;
  Lesson lesson;
  Bench bench;
  String path;
  Visitor wren;

  @BeforeAll
  void start(@TempDir Path data) {
    school = RunningSchool.plain(data);
  }

  @AfterAll
  void close() {
    school.close();
  }

  @BeforeEach
  void atABench() {
    lesson = new Lesson(school, HintStep.PLACE, false);
    bench = lesson.at(1, lesson.wren);
    path = "/bench/" + bench.id();
    wren = lesson.in(lesson.wren);
  }

  /** Sends a document as the page's script does. */
  HttpResponse<String> json(Visitor visitor, String body) {
    return json(visitor, token(visitor), body);
  }

  HttpResponse<String> json(Visitor visitor, String token, String body) {
    return visitor.send(
        HttpRequest.newBuilder(school.at(path + "/entries"))
            .header("Content-Type", "application/json")
            .header("X-CSRF-TOKEN", token)
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  /** What the page's script sends along. */
  String token(Visitor visitor) {
    var token = TOKEN.matcher(visitor.opens(path).body());
    assertThat(token.find()).isTrue();
    return token.group(1);
  }

  static String entry(String name, String text, String base) {
    return "{\"entries\":[{\"name\":\"%s\",\"text\":%s,\"base\":%s}]}".formatted(name, text, base);
  }
}
