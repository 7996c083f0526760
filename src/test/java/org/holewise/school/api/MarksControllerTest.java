package org.holewise.school.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.springframework.http.MediaType.APPLICATION_JSON;
import static org.springframework.http.MediaType.APPLICATION_PROBLEM_JSON;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.ExerciseDocument;
import org.holewise.document.MarkRequest;
import org.holewise.engine.diagnosis.Diagnosis;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Points;
import org.holewise.engine.wiring.WiringReport;
import org.holewise.school.library.LibraryExercise;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;

/** The border of the API alone: marking itself is a stand-in that gives as many marks as parts. */
@Tag("fast")
class MarksControllerTest {
  private static final String LANTERN =
      """
      {"slug": "lantern", "board": "400",
       "parts": [{"ref": "R1", "kind": "resistor", "ohms": 100}], "nets": {}}
      """;
  private static final String SOUND =
      "{\"exercise\": \"lantern\", \"build\": {\"placed\": [{\"ref\": \"R1\", \"holes\": {}}]}}";

  private final MockMvc api =
      MockMvcBuilders.standaloneSetup(
              new MarksController(() -> List.of(lantern()), MarksControllerTest::mark))
          .build();

  private static LibraryExercise lantern() {
    var exercise =
        ExerciseDocument.json(LANTERN.getBytes(StandardCharsets.UTF_8)).orThrow().exercise();
    var none = new BenchRecord("", exercise.meter(), Optional.empty(), Map.of(), List.of());
    return new LibraryExercise(exercise, List.of(), LANTERN, none);
  }

  private static Mark mark(MarkRequest request) {
    int placed = request.record().build().map(build -> build.placed().size()).orElse(0);
    return new Mark(
        "1.1.0",
        "start",
        List.of(),
        new WiringReport(true, 1, List.of()),
        List.of(),
        new Diagnosis(List.of(), Optional.empty(), List.of()),
        List.of(),
        new Points(placed, 0, 100, false));
  }

  @Test
  void marksOneBuild() throws Exception {
    post("/api/marks", SOUND)
        .andExpect(status().isOk())
        .andExpect(content().contentType(APPLICATION_JSON))
        .andExpect(jsonPath("$.marks.total").value(1))
        .andExpect(jsonPath("$.findings").isEmpty());
  }

  @Test
  void takesAnExerciseInPlaceOfASlug() throws Exception {
    post("/api/marks", SOUND.replace("\"lantern\"", LANTERN)).andExpect(status().isOk());
  }

  @Test
  void namesEveryWrongPlaceOfAMalformedRequest() throws Exception {
    post("/api/marks", SOUND.replace("lantern", "beacon").replace("{}", "{\"1\": \"z99\"}"))
        .andExpect(status().isBadRequest())
        .andExpect(content().contentType(APPLICATION_PROBLEM_JSON))
        .andExpect(jsonPath("$.status").value(400))
        .andExpect(jsonPath("$.title").isNotEmpty())
        .andExpect(jsonPath("$.errors", hasSize(2)))
        .andExpect(jsonPath("$.errors[0].at").value("/exercise"))
        .andExpect(jsonPath("$.errors[1].at").value("/build/placed/0/holes/1"))
        .andExpect(jsonPath("$.errors[1].text", containsString("z99")));
  }

  @Test
  void saysWhereJsonBreaksOff() throws Exception {
    post("/api/marks", "{\"exercise\": \"lan")
        .andExpect(status().isBadRequest())
        .andExpect(jsonPath("$.errors", hasSize(1)))
        .andExpect(jsonPath("$.errors[0].at").value(""))
        .andExpect(jsonPath("$.errors[0].text", containsString("line 1")));
    post("/api/marks", " ").andExpect(status().isBadRequest());
  }

  @Test
  void answersABatchWithAMarkOrAProblemEach() throws Exception {
    post("/api/marks/batch", "[" + SOUND + ", {}, " + SOUND + "]")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$", hasSize(3)))
        .andExpect(jsonPath("$[0].marks.total").value(1))
        .andExpect(jsonPath("$[1].errors", hasSize(2)))
        .andExpect(jsonPath("$[1].errors[0].at").value("/exercise"))
        .andExpect(jsonPath("$[1].status").value(400))
        .andExpect(jsonPath("$[2].marks.total").value(1));
    post("/api/marks/batch", "[]").andExpect(status().isOk()).andExpect(content().string("[]"));
  }

  @Test
  void refusesABatchThatIsTooLongOrNoList() throws Exception {
    post("/api/marks/batch", "[" + "1,".repeat(200) + "1]").andExpect(status().isBadRequest());
    post("/api/marks/batch", SOUND).andExpect(status().isBadRequest());
  }

  @Test
  void takesJsonByPostOnly() throws Exception {
    api.perform(get("/api/marks"))
        .andExpect(status().isMethodNotAllowed())
        .andExpect(header().string("Allow", "POST"));
    api.perform(request("/api/marks").contentType("text/plain").content(SOUND))
        .andExpect(status().isUnsupportedMediaType());
    api.perform(
            request("/api/marks").contentType(APPLICATION_JSON).accept("text/html").content(SOUND))
        .andExpect(status().isNotAcceptable());
  }

  @Test
  void sendsProblemsToWhoeverTakesJsonOnly() throws Exception {
    api.perform(
            request("/api/marks")
                .contentType(APPLICATION_JSON)
                .accept(APPLICATION_JSON)
                .content("{}"))
        .andExpect(status().isBadRequest())
        .andExpect(content().contentType(APPLICATION_PROBLEM_JSON));
  }

  private ResultActions post(String path, String body) throws Exception {
    return api.perform(request(path).contentType(APPLICATION_JSON).content(body));
  }

  private static MockHttpServletRequestBuilder request(String path) {
    return MockMvcRequestBuilders.post(path);
  }
}
