package org.holewise.school.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemasIT {
  private static RunningSchool school;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"exercise", "build", "mark"})
  void areOpenToAnybody(String name) {
    var answer = get("/api/schemas/" + name, "*/*");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/schema+json");
    assertThat(answer.body()).contains("https://json-schema.org/draft/2020-12/schema");
  }

  @Test
  void areJsonForWhoeverAsksForThat() {
    var answer = get("/api/schemas/build", "application/json");
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/json");
  }

  @Test
  void thatDoNotExistAreAProblem() {
    var answer = get("/api/schemas/kit", "*/*");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  private static HttpResponse<String> get(String path, String accept) {
    var call = HttpRequest.newBuilder(school.at(path)).header("Accept", accept);
    return new Visitor(school).send(call.build());
  }
}
