package org.holewise.school.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Marks over the wire, as a teacher's program gets them. */
class MarksIT {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static RunningSchool school;
  private static String token;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
    var teacher = school.part(People.class).add("Tom", Role.TEACHER, "nine lamps over the stage");
    token = school.part(ApiTokens.class).make(teacher, "test");
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @Test
  void theCheckedBuildsOfTheLibraryEarnEverything() throws Exception {
    for (LibraryExercise entry : school.part(Library.class).exercises()) {
      String slug = entry.exercise().slug();
      var answer = post("/api/marks", request(slug));
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(header(answer, "Content-Type")).isEqualTo("application/json");
      JsonNode mark = JSON.readTree(answer.body());
      assertThat(mark.get("findings")).as(slug).isEmpty();
      assertThat(mark.at("/wiring/matches").booleanValue()).as(slug).isTrue();
      assertThat(mark.at("/marks/total").intValue()).as(slug).isEqualTo(100);
      assertThat(mark.at("/suspects/0/kind").stringValue()).as(slug).isEqualTo("none");
      assertThat(mark.get("cautions")).as(slug).isEmpty();
    }
  }

  @Test
  void aBatchIsAnsweredInItsOrder() throws Exception {
    String one = request("stage-cue");
    var answer = post("/api/marks/batch", "[" + one + ",{\"exercise\": 5}," + one + "]");
    JsonNode answers = JSON.readTree(answer.body());
    assertThat(answers).hasSize(3);
    assertThat(answers.get(0)).isEqualTo(answers.get(2));
    assertThat(answers.at("/1/errors/0/at").stringValue()).isEqualTo("/exercise");
  }

  @Test
  void malformedRequestsAreAProblemWithEveryPlace() throws Exception {
    var answer = post("/api/marks", request("stage-cue").replace("\"e10\"", "\"z99\""));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
    JsonNode errors = JSON.readTree(answer.body()).get("errors");
    assertThat(errors).hasSize(1);
    assertThat(errors.at("/0/at").stringValue()).isEqualTo("/build/placed/1/holes/1");
  }

  @ParameterizedTest
  @CsvSource({
    "GET, application/json, application/json, 405",
    "PUT, application/json, application/json, 405",
    "POST, text/plain, application/json, 415",
    "POST, application/json, text/html, 406"
  })
  void whatDoesNotFitTheAddressIsAProblem(String method, String sent, String taken, int status) {
    var call =
        call("/api/marks")
            .header("Content-Type", sent)
            .header("Accept", taken)
            .method(method, BodyPublishers.ofString("{}"));
    var answer = new Visitor(school).send(call.build());
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(header(answer, "Content-Type")).isEqualTo("application/problem+json");
  }

  private static String request(String slug) throws Exception {
    var build = new ClassPathResource("exercises/" + slug + "-build.json");
    return "{\"exercise\": \""
        + slug
        + "\", \"build\": "
        + build.getContentAsString(StandardCharsets.UTF_8)
        + "}";
  }

  private static HttpResponse<String> post(String path, String body) {
    var call =
        call(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(body));
    return new Visitor(school).send(call.build());
  }

  private static HttpRequest.Builder call(String path) {
    return HttpRequest.newBuilder(school.at(path)).header("Authorization", "Bearer " + token);
  }

  private static String header(HttpResponse<String> answer, String name) {
    return String.join("; ", answer.headers().allValues(name));
  }
}
