package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.document.shape.Problem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/**
 * The schemas, judged by a general-purpose validator (JSON Schema, draft 2020-12): they are
 * schemas, they take every document of ours, and they and the readers agree on what they can both
 * say.
 */
@Tag("fast")
class DocumentSchemaTest {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final int CHANGES = 800;

  /** What a schema cannot say: values of texts, and what places say of each other. */
  private static final Set<String> BEYOND_SCHEMA =
      Set.of(
          "unreadable-quantity",
          "unknown-ref",
          "unknown-pin",
          "ref-taken",
          "id-taken",
          "name-taken",
          "pin-on-two-nets",
          "no-lamp",
          "alone-two-parts",
          "band-of-word",
          "band-order",
          "no-marks",
          "unknown-condition",
          "no-unicode");

  static Schema schema(String name) {
    return REGISTRY.getSchema(DocumentSchema.named(name).orElseThrow().tree());
  }

  @ParameterizedTest
  @ValueSource(strings = {"exercise", "build", "mark"})
  void areSchemasByTheirDialect(String name) {
    var dialect =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    var tree = DocumentSchema.named(name).orElseThrow().tree();
    assertThat(dialect.validate(tree)).isEmpty();
    assertThat(dialect.validate(Edited.of(tree).put("/type", "5").tree())).isNotEmpty();
  }

  @Test
  void thereIsNoOther() {
    assertThat(DocumentSchema.named("Exercise")).isEmpty();
  }

  @Test
  void takeTheShippedExercisesAndBuilds() {
    for (String slug : ShippedFiles.SLUGS) {
      assertThat(schema("exercise").validate(ShippedFiles.exercise(slug))).isEmpty();
      assertThat(schema("build").validate(ShippedFiles.build(slug))).isEmpty();
    }
  }

  @Test
  void takeDocumentsWithEveryField() {
    var request = Footlights.request().tree();
    assertThat(schema("exercise").validate(request.get("exercise"))).isEmpty();
    assertThat(schema("build").validate(request.get("build"))).isEmpty();
  }

  @Test
  void takeAChipNamedByANumber() {
    String chip =
        "{\"slug\": \"gates\", \"board\": \"400\", \"nets\": {},"
            + " \"parts\": [{\"ref\": \"U1\", \"kind\": 74}]}";
    for (String number : List.of("7400", "4017", "74393")) {
      JsonNode exercise = Edited.of(chip.replace("74}", number + "}")).tree();
      assertThat(schema("exercise").validate(exercise)).as(number).isEmpty();
      assertAgreed(schema("exercise"), exercise, read(exercise));
    }
    JsonNode none = Edited.of(chip.replace("74}", "7401}")).tree();
    assertThat(schema("exercise").validate(none)).isNotEmpty();
    assertThat(read(none)).isNotEmpty();
  }

  private static List<Problem> read(JsonNode exercise) {
    return ExerciseDocument.json(Edited.JSON.writeValueAsBytes(exercise)).problems();
  }

  @Test
  void agreeWithTheReaderOfExercises() {
    var schema = schema("exercise");
    var mutations = new Mutations(4);
    for (int i = 0; i < CHANGES; i++) {
      JsonNode changed = mutations.change(exercise(i));
      var read = ExerciseDocument.json(Edited.JSON.writeValueAsBytes(changed));
      assertAgreed(schema, changed, read.problems());
    }
  }

  @Test
  void agreeWithTheReaderOfBuilds() {
    var schema = schema("build");
    var mutations = new Mutations(5);
    for (int i = 0; i < CHANGES; i++) {
      var exercise =
          ExerciseDocument.json(Edited.JSON.writeValueAsBytes(exercise(i))).orThrow().exercise();
      JsonNode changed = mutations.change(build(i));
      var read = BuildDocument.json(Edited.JSON.writeValueAsBytes(changed), exercise);
      assertAgreed(schema, changed, read.problems());
    }
  }

  private static JsonNode exercise(int i) {
    return of(i).map(ShippedFiles::exercise).orElse(Footlights.request().tree().get("exercise"));
  }

  private static JsonNode build(int i) {
    return of(i).map(ShippedFiles::build).orElse(Footlights.request().tree().get("build"));
  }

  private static Optional<String> of(int i) {
    return ShippedFiles.SLUGS.stream().skip(i % (ShippedFiles.SLUGS.size() + 1)).findFirst();
  }

  private static void assertAgreed(Schema schema, JsonNode document, List<Problem> problems) {
    var structural = problems.stream().filter(problem -> sayable(problem, document)).toList();
    var errors = schema.validate(document);
    assertThat(structural.isEmpty())
        .as("reader: %s%nschema: %s%n%s", problems, errors, document)
        .isEqualTo(errors.isEmpty());
  }

  private static boolean sayable(Problem problem, JsonNode document) {
    boolean elsewhere =
        problem.at().matches("/conditions/\\d+/set/[^/]+/.*|/readings/\\d+/band/\\d+")
            && !problem.kind().equals("not-quantity");
    boolean inText =
        problem.kind().equals("out-of-range")
            && document.at(JsonPointer.compile(problem.at())).isString();
    return !BEYOND_SCHEMA.contains(problem.kind()) && !elsewhere && !inText;
  }
}
