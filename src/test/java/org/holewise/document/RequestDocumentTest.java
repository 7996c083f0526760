package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Read;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Scheme;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Pin;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class RequestDocumentTest {
  private static final RequestDocument REQUESTS = new RequestDocument(slug -> Optional.empty());

  private static MarkRequest sound(Edited request) {
    return REQUESTS.read(request.bytes()).orThrow();
  }

  private static List<String> places(Edited request) {
    return REQUESTS.read(request.bytes()).problems().stream().map(Problem::at).toList();
  }

  @Nested
  class AnExercise {
    private final MarkRequest request = sound(Footlights.request());

    @Test
    void keepsItsHeadAndScheme() {
      assertThat(request.exercise().slug()).isEqualTo("footlight-row");
      assertThat(request.exercise().board().name()).isEqualTo("830-split");
      assertThat(request.exercise().marks()).isEqualTo(new Scheme(50, 50));
      assertThat(request.exercise().allow().seriesOrder()).isFalse();
    }

    @Test
    void hasQuantitiesInSiUnits() {
      var ohms = request.exercise().parts().stream().map(part -> part.number("ohms")).toList();
      assertThat(ohms).containsExactly(1000.0, 2200.0, 4700.0);
      assertThat(request.exercise().parts().get(1).number("tolerance")).isEqualTo(0.05);
    }

    @Test
    void hasConditionsWithSettings() {
      var warm = request.exercise().condition("warm");
      assertThat(warm.temperature()).isEqualTo(OptionalDouble.of(30));
      assertThat(request.exercise().partsIn(warm).get(0).number("ohms")).isEqualTo(1010.0);
    }

    @Test
    void hasReadingsWithDefaults() {
      var readings = request.exercise().readings();
      assertThat(readings.get(0).measure())
          .isEqualTo(new Measure.Ohms(pin("R1", "1"), pin("R1", "2"), true));
      assertThat(readings.get(0).weight()).isEqualTo(1);
      assertThat(readings.get(0).when()).isEqualTo("cool");
      assertThat(readings.get(1).label()).isEqualTo("row");
      assertThat(readings.get(1).band()).contains(new Reading.Limits(7500, 8300));
      assertThat(readings.get(2).when()).isEqualTo("warm");
    }

    @Test
    void withoutConditionsHasOneNamedNormal() {
      var edited =
          Footlights.request()
              .remove("/exercise/conditions")
              .remove("/exercise/readings/2")
              .remove("/build/extra");
      assertThat(sound(edited).exercise().conditions().get(0).name()).isEqualTo("normal");
    }

    /** A chip's name is a number to whoever writes one. */
    @Test
    void mayNameAChipByANumber() {
      String words =
          """
          slug: gates
          board: "400"
          parts:
            - {ref: U1, kind: 7400}
            - {ref: U2, kind: "4017"}
          nets: {}
          """;
      var parts = ExerciseDocument.yaml(words).orThrow().exercise().parts();
      assertThat(parts).extracting(part -> part.kind().name()).containsExactly("7400", "4017");
      var edited = Footlights.request().put("/exercise/parts/2/kind", "7401");
      assertThat(places(edited)).contains("/exercise/parts/2/kind");
    }

    @Test
    void mayLeaveOutWhatHasADefault() {
      var edited = Footlights.request();
      for (String field : List.of("title", "aim", "notes", "meter", "allow", "marks")) {
        edited.remove("/exercise/" + field);
      }
      var exercise = sound(edited).exercise();
      assertThat(exercise.title()).isEqualTo("footlight-row");
      assertThat(exercise.meter()).isEqualTo("hand-2000");
      assertThat(exercise.marks()).isEqualTo(new Scheme(60, 40));
    }
  }

  @Nested
  class ABuild {

    @Test
    void keepsWhatWasPlacedLaidAndRead() {
      var record = sound(Footlights.request()).record();
      var build = record.build().orElseThrow();
      assertThat(build.placed().get(0).holes())
          .isEqualTo(Map.of("1", new Hole(1, "a", 5), "2", new Hole(1, "a", 10)));
      assertThat(build.placed().get(0).marked()).contains("1k0");
      assertThat(build.links().get(0).to()).isEqualTo(new Hole(1, "e", 10));
      assertThat(record.readings().get("r1")).isEqualTo(Written.text("998 ohm"));
      assertThat(record.readings().get("row")).isEqualTo(Written.number(7880));
      assertThat(record.extra().get(0).measure())
          .isEqualTo(new Measure.Ohms(pin("R2", "1"), Probe.at(new Hole(1, "e", 15)), false));
    }

    @Test
    void withoutPartsAndLinksHasNoLayout() {
      var edited = Footlights.request().remove("/build/placed").remove("/build/links");
      assertThat(sound(edited).record().build()).isEmpty();
      assertThat(sound(Footlights.request().remove("/build/placed")).record().build()).isPresent();
    }

    @Test
    void takesBoardAndMeterFromTheExerciseWhereItIsSilent() {
      var edited = Footlights.request().remove("/build/board").remove("/build/meter");
      var record = sound(edited).record();
      assertThat(record.build().orElseThrow().board().name()).isEqualTo("830-split");
      assertThat(record.meter()).isEqualTo("hand-2000");
    }

    @Test
    void readsHolesInAllTheirSpellings() {
      var edited =
          Footlights.request()
              .put("/build/placed/0/holes", "{\"1\": \"5A\", \"2\": \" \u2212j3 \"}")
              .put("/build/links/0", "[\"e-12\", \"2:+a\"]");
      var build = sound(edited).record().build().orElseThrow();
      assertThat(build.placed().get(0).holes().values().toString()).isEqualTo("[a5, -j3]");
      assertThat(build.links().get(0).toString()).contains("e12").contains("2:+a");
    }

    @Test
    void leavesOutReadingsThatAreBlank() {
      var record = sound(Footlights.request().put("/build/readings/r1", "\" \"")).record();
      assertThat(record.readings()).containsOnlyKeys("row", "ring");
    }
  }

  @Nested
  class OddButWellFormed {

    @Test
    void aBuildForAnotherExerciseBoardAndMeterIsFound() {
      var edited =
          Footlights.request().put("/build/exercise", "\"curtain\"").put("/build/board", "\"400\"");
      assertThat(kinds(sound(edited)))
          .containsExactly("/build/exercise other-exercise", "/build/board other-board");
    }

    @Test
    void readingsThatNobodyAskedForAreFound() {
      var edited = Footlights.request().put("/build/readings/a~1b~0c", "\"1 V\"");
      assertThat(kinds(sound(edited))).containsExactly("/build/readings/a~1b~0c unknown-reading");
    }

    @Test
    void extraReadingsThatCannotBeUsedAreFoundAndLeftOut() {
      var edited =
          Footlights.request()
              .put("/build/extra/1", "{\"id\": \"r1\", \"amps\": \"R1.1\", \"value\": \"1 mA\"}")
              .put("/build/extra/2", "{\"id\": \"x2\", \"amps\": \"R9.1\", \"value\": \"1 mA\"}")
              .put("/build/extra/3", "{\"id\": \"x3\", \"amps\": \"R1.9\", \"value\": \"1 mA\"}")
              .put(
                  "/build/extra/4",
                  "{\"id\": \"x4\", \"volts\": [\"R1.1\", \"e64\"], \"value\": \"1 V\"}")
              .put("/build/extra/5", "{\"id\": \"x5\", \"seen\": \"R1\", \"value\": \"lit\"}")
              .put(
                  "/build/extra/6",
                  "{\"id\": \"x6\", \"amps\": \"R1.1\", \"when\": \"hot\", \"value\": \"1 A\"}");
      assertThat(kinds(sound(edited)))
          .containsExactly(
              "/build/extra/1/id extra-id-taken",
              "/build/extra/2/amps unknown-ref",
              "/build/extra/3/amps unknown-pin",
              "/build/extra/4/volts/1 probe-off-board",
              "/build/extra/5/seen no-lamp",
              "/build/extra/6/when unknown-condition");
      assertThat(sound(edited).record().extra()).hasSize(1);
    }

    private static List<String> kinds(MarkRequest request) {
      return request.findings().stream().map(OddButWellFormed::place).toList();
    }

    private static String place(Finding finding) {
      return finding.at() + " " + finding.kind();
    }
  }

  @Nested
  class ASlug {

    @Test
    void standsForAnExerciseOfTheLibrary() {
      var known = sound(Footlights.request()).exercise();
      var library = new RequestDocument(slug -> Optional.of(known).filter(e -> slug.equals("row")));
      var edited = Footlights.request().put("/exercise", "\"row\"");
      assertThat(library.read(edited.bytes()).orThrow().exercise()).isEqualTo(known);
    }

    @Test
    void thatTheLibraryLacksIsWrongTogetherWithTheRest() {
      var edited =
          Footlights.request()
              .put("/exercise", "\"curtain\"")
              .put("/build/placed/1/holes/2", "\"z99\"");
      assertThat(places(edited)).containsExactly("/exercise", "/build/placed/1/holes/2");
    }
  }

  @Nested
  class ABatch {

    @Test
    void isReadElementByElement() {
      byte[] body = ("[" + Footlights.REQUEST + ", 7, {\"a\": 1, \"a\": 2}]").getBytes(UTF);
      List<Read<MarkRequest>> each = REQUESTS.readBatch(body).orThrow();
      assertThat(each.get(0)).isInstanceOf(Read.Ok.class);
      assertThat(each.get(1).problems()).containsExactly(Problem.of("", "not-object"));
      assertThat(each.get(2).problems())
          .extracting(Problem::at)
          .containsExactlyInAnyOrder("/a", "/a", "/exercise", "/build");
    }

    @Test
    void ofMoreThanTwoHundredIsWrongAsAWhole() {
      assertThat(REQUESTS.readBatch(list(201)).problems())
          .containsExactly(Problem.of("", "too-many", 200));
      assertThat(REQUESTS.readBatch(list(200)).orThrow()).hasSize(200);
    }

    @Test
    void thatIsNoListIsWrongAsAWhole() {
      assertThat(REQUESTS.readBatch("{}".getBytes(UTF)).problems())
          .containsExactly(Problem.of("", "not-list", 200));
    }

    @Test
    void thatIsWrongAllOverIsAnswered() {
      String twice = "\"a\":1,".repeat(400_000);
      byte[] body = ("[{" + twice + "\"b\":1}]").getBytes(UTF);
      // By the square of its length it would take many minutes.
      var problems =
          Assertions.assertTimeout(
              Duration.ofMinutes(1), () -> REQUESTS.readBatch(body).problems());
      assertThat(problems).hasSize(1_001);
      assertThat(problems.get(1_000).kind()).isEqualTo("and-more");
    }

    private static byte[] list(int size) {
      return ("[" + "1,".repeat(size - 1) + "1]").getBytes(UTF);
    }
  }

  private static final java.nio.charset.Charset UTF = StandardCharsets.UTF_8;

  private static Probe pin(String ref, String name) {
    return Probe.at(new Pin(ref, name));
  }
}
