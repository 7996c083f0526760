package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every wrong place is named, and no other. */
@Tag("fast")
class MalformedDocumentsTest {
  private static final RequestDocument REQUESTS = new RequestDocument(slug -> Optional.empty());

  @ParameterizedTest(name = "{0}")
  @MethodSource({"shapes", "exercises", "readings", "builds"})
  void namesEveryWrongPlace(String what, UnaryOperator<Edited> edit, List<String> expected) {
    assertThat(problems(edit.apply(Footlights.request()))).as(what).isEqualTo(expected);
  }

  @Test
  void theUnchangedRequestIsSound() {
    assertThat(problems(Footlights.request())).isEmpty();
  }

  @Test
  void namesWrongPlacesOfEveryPartAtOnce() {
    var edited =
        Footlights.request()
            .put("/exercise/parts/0/ohms", "\"many\"")
            .put("/exercise/parts/1/kind", "\"resister\"")
            .put("/exercise/nets/first/1", "\"R7.1\"")
            .put("/exercise/readings/1/ohms/1", "\"R3.9\"")
            .put("/build/placed/2/holes/1", "\"z99\"")
            .put("/build/colour", "\"red\"")
            .put("/ask/0", "\"smell\"");
    assertThat(problems(edited))
        .containsExactlyInAnyOrder(
            "/exercise/parts/0/ohms unreadable-quantity",
            "/exercise/parts/1/kind unknown-kind",
            "/exercise/nets/first/1 unknown-ref",
            "/exercise/readings/1/ohms/1 unknown-pin",
            "/build/placed/2/holes/1 not-a-hole",
            "/build/colour unknown-field",
            "/ask/0 not-a-choice");
  }

  private static List<String> problems(Edited request) {
    return REQUESTS.read(request.bytes()).problems().stream()
        .map(problem -> problem.at() + " " + problem.kind())
        .toList();
  }

  static Stream<Arguments> shapes() {
    return Stream.of(
        row("unknown field", "/surprise", "1", "/surprise unknown-field"),
        row("unknown field with odd name", "/a~1b", "1", "/a~1b unknown-field"),
        gone("no exercise", "/exercise", "/exercise missing-field"),
        gone("no build", "/build", "/build missing-field"),
        row("exercise is a list", "/exercise", "[]", "/exercise not-an-exercise"),
        row("exercise is null", "/exercise", "null", "/exercise not-an-exercise"),
        row("build is a text", "/build", "\"here\"", "/build not-object"),
        row("ask is a word", "/ask", "\"volts\"", "/ask not-list"),
        row("ask for a kind unknown", "/ask/1", "\"smell\"", "/ask/1 not-a-choice"));
  }

  static Stream<Arguments> exercises() {
    return Stream.of(
        gone("no slug", "/exercise/slug", "/exercise/slug missing-field"),
        row("slug with a space", "/exercise/slug", "\"a b\"", "/exercise/slug not-a-slug"),
        row("blank title", "/exercise/title", "\"  \"", "/exercise/title not-a-line"),
        row("title is a number", "/exercise/title", "4", "/exercise/title not-text"),
        row("long title", "/exercise/title", text(121), "/exercise/title too-long"),
        row("unknown board", "/exercise/board", "\"831\"", "/exercise/board unknown-board"),
        row("board is a flag", "/exercise/board", "true", "/exercise/board not-text"),
        row("unknown meter", "/exercise/meter", "\"x\"", "/exercise/meter unknown-meter"),
        row("no parts", "/exercise/parts", "{}", "/exercise/parts not-list"),
        row("part is a text", "/exercise/parts/3", "\"R4\"", "/exercise/parts/3 not-object"),
        gone("no ref", "/exercise/parts/0/kind", "/exercise/parts/0/kind missing-field"),
        row(
            "ref with a dot",
            "/exercise/parts/3",
            resistor("R.4"),
            "/exercise/parts/3/ref not-a-ref"),
        row("ref taken", "/exercise/parts/3", resistor("R1"), "/exercise/parts/3/ref ref-taken"),
        row(
            "kind unknown",
            "/exercise/parts/0/kind",
            "\"valve\"",
            "/exercise/parts/0/kind unknown-kind"),
        gone("no ohms", "/exercise/parts/0/ohms", "/exercise/parts/0/ohms missing-field"),
        row("ohms a flag", "/exercise/parts/0/ohms", "true", "/exercise/parts/0/ohms not-quantity"),
        row(
            "ohms in volts",
            "/exercise/parts/0/ohms",
            "\"5 V\"",
            "/exercise/parts/0/ohms unreadable-quantity"),
        row(
            "ohms below nothing",
            "/exercise/parts/0/ohms",
            "-5",
            "/exercise/parts/0/ohms out-of-range"),
        row(
            "tolerance of 200 %",
            "/exercise/parts/0/tolerance", "\"200 %\"", "/exercise/parts/0/tolerance out-of-range"),
        row(
            "a field of no resistor",
            "/exercise/parts/0/colour",
            "\"red\"",
            "/exercise/parts/0/colour unknown-field"),
        gone("no nets", "/exercise/nets", "/exercise/nets missing-field"),
        row("net is a pin", "/exercise/nets/left", "\"R1.1\"", "/exercise/nets/left not-list"),
        row(
            "pin without dot",
            "/exercise/nets/left/0",
            "\"R1\"",
            "/exercise/nets/left/0 not-a-pin"),
        row(
            "pin on two nets",
            "/exercise/nets/left/1",
            "\"R2.1\"",
            "/exercise/nets/first/1 pin-on-two-nets"),
        row(
            "pin twice on a net",
            "/exercise/nets/left/1",
            "\"R1.1\"",
            "/exercise/nets/left/1 twice"),
        row("net with a blank name", "/exercise/nets/ ", "[\"R3.2\"]", "/exercise/nets/  bad-name"),
        row("no condition", "/exercise/conditions", "[]", "/exercise/conditions too-few"),
        row(
            "condition taken",
            "/exercise/conditions/1/name",
            "\"cool\"",
            "/exercise/conditions/1/name name-taken",
            "/exercise/readings/2/when unknown-condition"),
        row(
            "setting of no part",
            "/exercise/conditions/1/set/R9",
            "{}",
            "/exercise/conditions/1/set/R9 unknown-ref"),
        row(
            "setting of no field",
            "/exercise/conditions/1/set/R1/closed",
            "true",
            "/exercise/conditions/1/set/R1/closed unknown-field"),
        row(
            "setting no quantity",
            "/exercise/conditions/1/set/R1/ohms",
            "\"low\"",
            "/exercise/conditions/1/set/R1/ohms unreadable-quantity"),
        row(
            "clock",
            "/exercise/conditions/0/clock",
            "\"U1.14\"",
            "/exercise/conditions/0/clock unknown-ref"),
        row(
            "a family of logic that there is not",
            "/exercise/parts/3",
            "{\"ref\": \"U1\", \"kind\": \"7400\", \"family\": \"ECL\"}",
            "/exercise/parts/3/family not-a-choice"),
        row(
            "allow a text",
            "/exercise/allow/seriesOrder",
            "\"no\"",
            "/exercise/allow/seriesOrder not-flag"),
        row("half a mark", "/exercise/marks/wiring", "50.5", "/exercise/marks/wiring not-whole"),
        row(
            "too many marks",
            "/exercise/marks/wiring",
            "1001",
            "/exercise/marks/wiring out-of-range"),
        row(
            "no marks at all",
            "/exercise/marks",
            "{\"wiring\": 0, \"readings\": 0}",
            "/exercise/marks no-marks"),
        row("sixty-one parts", "/exercise/parts", manyParts(), "/exercise/parts too-many"));
  }

  static Stream<Arguments> readings() {
    return Stream.of(
        gone("no id", "/exercise/readings/0/id", "/exercise/readings/0/id missing-field"),
        row("id taken", "/exercise/readings/1/id", "\"r1\"", "/exercise/readings/1/id id-taken"),
        row(
            "id with a space",
            "/exercise/readings/1/id",
            "\"r 1\"",
            "/exercise/readings/1/id not-an-id"),
        gone("no measure", "/exercise/readings/1/ohms", "/exercise/readings/1 one-of"),
        row(
            "two measures",
            "/exercise/readings/1/amps",
            "\"R1.1\"",
            "/exercise/readings/1/ohms one-only"),
        row(
            "one point",
            "/exercise/readings/1/ohms",
            "[\"R1.1\"]",
            "/exercise/readings/1/ohms too-few"),
        row(
            "the same point twice",
            "/exercise/readings/1/ohms/1",
            "\"R1.1\"",
            "/exercise/readings/1/ohms/1 twice"),
        row(
            "at a hole",
            "/exercise/readings/1/ohms/0",
            "\"e12\"",
            "/exercise/readings/1/ohms/0 not-a-pin"),
        row(
            "alone between two parts",
            "/exercise/readings/1/alone",
            "true",
            "/exercise/readings/1/alone alone-two-parts"),
        row(
            "alone for a buzzer",
            "/exercise/readings/2/alone",
            "true",
            "/exercise/readings/2/alone only-beside"),
        row(
            "no such condition",
            "/exercise/readings/1/when",
            "\"hot\"",
            "/exercise/readings/1/when unknown-condition"),
        row(
            "weight below nothing",
            "/exercise/readings/1/weight",
            "-1",
            "/exercise/readings/1/weight out-of-range"),
        row(
            "band upside down",
            "/exercise/readings/1/band",
            "[9000, 8000]",
            "/exercise/readings/1/band band-order"),
        row(
            "band in volts",
            "/exercise/readings/1/band/1",
            "\"9 V\"",
            "/exercise/readings/1/band/1 unreadable-quantity"),
        row(
            "band of a word",
            "/exercise/readings/2/band",
            "[0, 1]",
            "/exercise/readings/2/band band-of-word"),
        row(
            "a resistor by eye",
            "/exercise/readings/3",
            "{\"id\": \"glow\", \"seen\": \"R1\"}",
            "/exercise/readings/3/seen no-lamp"),
        row(
            "a ratio of one point, and no generator",
            "/exercise/readings/3",
            "{\"id\": \"d\", \"ratio\": {\"of\": \"R1.1\", \"to\": [\"R1.1\", \"R1.2\"]}}",
            "/exercise/readings/3/ratio/of no-generator"),
        row(
            "a frequency of nothing",
            "/exercise/readings/3",
            "{\"id\": \"d\", \"peak\": [\"R1.1\", \"R1.2\"], \"hertz\": 0}",
            "/exercise/readings/3/hertz out-of-range"));
  }

  static Stream<Arguments> builds() {
    return Stream.of(
        row("unknown board", "/build/board", "\"831\"", "/build/board unknown-board"),
        row("unknown meter", "/build/meter", "\"x\"", "/build/meter unknown-meter"),
        row("no hole", "/build/placed/2/holes/1", "\"z99\"", "/build/placed/2/holes/1 not-a-hole"),
        row(
            "hole is a number",
            "/build/placed/2/holes/1",
            "12",
            "/build/placed/2/holes/1 not-text"),
        gone("no ref", "/build/placed/0/ref", "/build/placed/0/ref missing-field"),
        gone("no holes", "/build/placed/1/holes", "/build/placed/1 one-of"),
        row("holes and pin 1", "/build/placed/1/pin1", "\"e5\"", "/build/placed/1/pin1 one-only"),
        row("link with one end", "/build/links/0", "[\"a1\"]", "/build/links/0 too-few"),
        row(
            "link with three",
            "/build/links/0",
            "[\"a1\", \"a2\", \"a3\"]",
            "/build/links/0 too-many"),
        row(
            "reading is a flag",
            "/build/readings/ring",
            "true",
            "/build/readings/ring not-a-reading"),
        row(
            "reading is null",
            "/build/readings/ring",
            "null",
            "/build/readings/ring not-a-reading"),
        row("long reading", "/build/readings/ring", text(81), "/build/readings/ring too-long"),
        gone("extra without value", "/build/extra/0/value", "/build/extra/0/value missing-field"),
        row(
            "extra at nothing",
            "/build/extra/0/ohms/0",
            "\"z99\"",
            "/build/extra/0/ohms/0 not-a-probe"),
        row(
            "extra id twice",
            "/build/extra/1",
            "{\"id\": \"x1\", \"amps\": \"R1.1\", \"value\": \"1 mA\"}",
            "/build/extra/1/id id-taken"),
        row(
            "301 links",
            "/build/links",
            "[" + "[\"a1\",\"b1\"],".repeat(300) + "[\"a1\",\"b1\"]]",
            "/build/links too-many"));
  }

  private static Arguments row(String what, String at, String json, String... expected) {
    UnaryOperator<Edited> edit = request -> request.put(at, json);
    return arguments(what, edit, List.of(expected));
  }

  private static Arguments gone(String what, String at, String... expected) {
    UnaryOperator<Edited> edit = request -> request.remove(at);
    return arguments(what, edit, List.of(expected));
  }

  private static String text(int length) {
    return "\"" + "x".repeat(length) + "\"";
  }

  private static String resistor(String ref) {
    return "{\"ref\": \"" + ref + "\", \"kind\": \"resistor\", \"ohms\": 10}";
  }

  private static String manyParts() {
    var parts = new StringBuilder("[");
    for (int i = 0; i < 61; i++) {
      parts.append(i == 0 ? "" : ",").append(resistor("Q" + i));
    }
    return parts.append("]").toString();
  }
}
