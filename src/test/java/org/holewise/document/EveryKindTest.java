package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.document.shape.FieldShapes;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.marking.Marking;
import org.holewise.engine.part.Field;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Limit;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Every kind of part on the road of documents: placed, read and marked once, and every wrong thing
 * that may be said of it named by its place.
 */
class EveryKindTest {
  private static final RequestDocument REQUESTS = new RequestDocument(slug -> Optional.empty());
  private static final String AT = "/exercise/parts/3";

  static Stream<String> kinds() {
    return Registry.kinds().stream().map(Kind::name);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void isPlacedReadAndMarked(String name) {
    Edited request = new Bench(Registry.kind(name).orElseThrow()).request();
    JsonNode blank = mark(request);
    JsonNode expected = blank.at("/readings/0/expected");
    assertThat(expected.isNumber()).as("%s", blank.get("readings")).isTrue();
    request.put("/build/readings", "{\"over\": " + expected + "}");
    JsonNode mark = mark(request);
    assertThat(mark.get("findings")).isEmpty();
    assertThat(mark.at("/wiring/matches").booleanValue()).isTrue();
    assertThat(mark.at("/readings/0/verdict").stringValue()).isEqualTo("within");
    assertThat(mark.at("/marks/total").intValue()).isEqualTo(100);
    JsonNode away = mark(request.put("/build/readings", "{\"over\": 17.5}"));
    assertThat(away.at("/readings/0/verdict").stringValue()).isEqualTo("outside");
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyWrongThingSaidOfItIsNamed(String name) {
    Kind kind = Registry.kind(name).orElseThrow();
    assertThat(wrong(kind, AT + "/surprise", "1")).containsExactly(AT + "/surprise unknown-field");
    for (Field field : kind.fields()) {
      boolean inside = field instanceof Field.Group || field instanceof Field.Rows;
      String at = AT + "/" + field.name();
      assertThat(wrong(kind, at, inside ? "\"odd\"" : "{\"odd\": 1}"))
          .as(at)
          .contains(at + " " + otherType(field));
      if (field instanceof Field.Number number) {
        assertThat(wrong(kind, at, String.valueOf(number.most() * 1.5 + 1)))
            .contains(at + " out-of-range");
        assertThat(wrong(kind, at, "\"a lot\"")).contains(at + " unreadable-quantity");
        if (number.required()) {
          var problems = problems(new Bench(kind).request().remove(at));
          assertThat(problems).containsAnyOf(at + " missing-field", AT + " one-of");
        }
      }
      if (field instanceof Field.Choice) {
        assertThat(wrong(kind, at, "\"odd\"")).containsExactly(at + " not-a-choice");
      }
    }
  }

  private static String otherType(Field field) {
    if (field instanceof Field.Number) {
      return "not-quantity";
    }
    if (field instanceof Field.Flag) {
      return "not-flag";
    }
    if (field instanceof Field.Group) {
      return "not-object";
    }
    return field instanceof Field.Rows ? "not-list" : "not-text";
  }

  /** What is wrong once a value stands in a part that is sound otherwise. */
  private static List<String> wrong(Kind kind, String at, String value) {
    return problems(new Bench(kind).request().put(at, value));
  }

  private static List<String> problems(Edited request) {
    return REQUESTS.read(request.bytes()).problems().stream()
        .map(problem -> problem.at() + " " + problem.kind())
        .toList();
  }

  private static JsonNode mark(Edited edited) {
    MarkRequest request = REQUESTS.read(edited.bytes()).orThrow();
    var mark = Marking.mark(request.exercise(), request.record(), Priors.start(), request.ask());
    return Edited.JSON.readTree(
        MarkDocument.bytes(MarkDocument.tree(request, mark, Messages.english())));
  }

  /**
   * A part X1 between two rails, behind R1 where it is no chip; a third pin hangs on R2 from the
   * same rail.
   */
  private record Bench(Kind kind) {

    Edited request() {
      Map<String, String> holes = holes();
      String plus = supply().map(Limit.Supply::plus).orElse(pins().get(0));
      String minus =
          supply().map(Limit.Supply::minus).orElse(kind.source() ? last() : lastOther(plus));
      Optional<String> third =
          pins().stream()
              .filter(pin -> pins().size() == 3 && !pin.equals(plus) && !pin.equals(minus))
              .findFirst();
      return Edited.of(
          """
          {"exercise": {"slug": "every-kind", "board": "830",
             "parts": [
               {"ref": "B1", "kind": "battery", "volts": 5, "internal": 1},
               {"ref": "R1", "kind": "resistor", "ohms": %s},
               {"ref": "R2", "kind": "resistor", "ohms": "22k"},
               {"ref": "X1", "kind": "%s"%s}],
             "nets": {"rail": ["B1.+", "R1.1", "R2.1"], "top": ["R1.2", "X1.%s"],
               "third": ["R2.2"%s], "zero": ["B1.-", "X1.%s"]},
             "readings": [{"id": "over", "volts": ["X1.%s", "X1.%s"]}]},
           "build": {
             "placed": [
               {"ref": "B1", "holes": {"+": "+a3", "-": "-a3"}},
               {"ref": "R1", "holes": {"1": "a50", "2": "a55"}},
               {"ref": "R2", "holes": {"1": "c50", "2": "c60"}},
               {"ref": "X1", %s}],
             "links": [["b50", "+a50"], ["b55", "%s"], ["%s", "-a9"]%s],
             "readings": {}}}
          """
              .formatted(
                  supply().isPresent() ? "10" : "1000",
                  kind.name(),
                  said(kind.fields()),
                  plus,
                  third.map(pin -> ", \"X1." + pin + "\"").orElse(""),
                  minus,
                  plus,
                  minus,
                  placed(holes),
                  beside(holes, plus),
                  beside(holes, minus),
                  third.map(p -> ", [\"b60\", \"" + beside(holes, p) + "\"]").orElse("")));
    }

    private Part part() {
      return new Part("X1", kind, Fields.NONE);
    }

    private List<String> pins() {
      return kind.pins(Fields.NONE);
    }

    private String last() {
      return pins().get(pins().size() - 1);
    }

    private String lastOther(String plus) {
      return last().equals(plus) ? pins().get(0) : last();
    }

    private Optional<Limit.Supply> supply() {
      return kind.footprint(Fields.NONE) instanceof Footprint.Dip
          ? kind.limits(part()).stream()
              .filter(Limit.Supply.class::isInstance)
              .map(Limit.Supply.class::cast)
              .findFirst()
          : Optional.empty();
    }

    private String placed(Map<String, String> holes) {
      if (kind.footprint(Fields.NONE) instanceof Footprint.Dip) {
        return "\"pin1\": \"e20\"";
      }
      return "\"holes\": " + Edited.JSON.writeValueAsString(Edited.JSON.valueToTree(holes));
    }

    /** Where each pin goes, each in a strip of its own. */
    private Map<String, String> holes() {
      Footprint footprint = kind.footprint(Fields.NONE);
      var holes = new LinkedHashMap<String, String>();
      int count = pins().size();
      for (int k = 0; k < count; k++) {
        String hole;
        if (footprint instanceof Footprint.Dip dip) {
          hole = k < dip.pins() / 2 ? "e" + (20 + k) : "f" + (20 + dip.pins() - 1 - k);
        } else if (footprint instanceof Footprint.AcrossGroove across) {
          hole = (k % 2 == 0 ? "e" : "f") + (20 + k / 2 * across.columns());
        } else if (footprint instanceof Footprint.Leads leads) {
          hole = "e" + (20 + k * Math.max(leads.least(), Math.min(4, leads.most())));
        } else {
          hole = "e" + (20 + k);
        }
        holes.put(pins().get(k), hole);
      }
      return holes;
    }

    private static String beside(Map<String, String> holes, String pin) {
      String hole = holes.getOrDefault(pin, "");
      return (hole.startsWith("e") ? "a" : "j") + hole.substring(1);
    }

    /** What must be said of it, so much that it is sound. */
    private static String said(List<Field> fields) {
      var said = new ArrayList<String>();
      List<String> alternatives = FieldShapes.alternatives(fields);
      for (Field field : fields) {
        boolean other = alternatives.size() > 1 && alternatives.contains(field.name());
        if (field instanceof Field.Number number && (number.required() || other)) {
          said.add(", \"%s\": %s".formatted(number.name(), usual(number)));
        }
        if (field instanceof Field.Group group && group.required()) {
          said.add(
              ", \"%s\": {%s}"
                  .formatted(group.name(), said(group.fields()).replaceFirst("^, ", "")));
        }
      }
      return String.join("", said);
    }

    private static double usual(Field.Number number) {
      double usual =
          switch (number.unit()) {
            case OHM -> 1e3;
            case FARAD -> 1e-6;
            case HENRY -> 1e-2;
            case VOLT -> 3;
            case AMP -> 5e-3;
            case HERTZ -> 1e3;
            default -> 0.5;
          };
      return Math.min(Math.max(usual, number.least()), number.most());
    }
  }
}
