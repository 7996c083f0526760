package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.document.text.Messages;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.Diagnosis;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Points;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Difference;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;
import org.holewise.engine.wiring.WiringReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

@Tag("fast")
class MarkDocumentTest {
  private static final MarkRequest REQUEST = request();

  private static MarkRequest request() {
    byte[] body = Edited.JSON.writeValueAsBytes(ShippedFiles.request("stage-moonlight"));
    var read = new RequestDocument(slug -> Optional.empty()).read(body).orThrow();
    return new MarkRequest(
        read.exercise(),
        read.record(),
        List.of(Finding.of("/build/exercise", "other-exercise", "x", "stage-moonlight")),
        Set.of());
  }

  @Test
  void hasTheFieldsOfTheFormatInTheirOrder() {
    ObjectNode tree = tree(mark());
    assertThat(Edited.names(tree))
        .containsExactly(
            "engine",
            "priors",
            "findings",
            "wiring",
            "readings",
            "suspects",
            "next",
            "try",
            "cautions",
            "marks");
    assertThat(without("text", tree.get("wiring").get("differences").get(0)))
        .isEqualTo(
            "{\"ref\":\"D1\",\"pin\":\"k\",\"hole\":\"c18\",\"net\":\"switched\",\"joins\":\"moon\","
                + "\"move\":[\"b17\",\"a17\"],\"or\":[{\"place\":\"S1\"}]}");
    assertThat(without("text", tree.get("suspects").get(0)))
        .isEqualTo(
            "{\"kind\":\"open-contact\",\"ref\":\"R1\",\"pin\":\"2\",\"holes\":[\"b15\"],"
                + "\"probability\":0.623457,\"kinds\":[{\"kind\":\"open-contact\","
                + "\"holes\":[\"b15\"],\"probability\":0.5},{\"kind\":\"wrong-hole\","
                + "\"holes\":[\"b14\"],\"probability\":0.123457}],\"alike\":[]}");
    assertThat(without("text", tree.get("next")))
        .isEqualTo("{\"volts\":[\"R1.2\",\"f13\"],\"when\":\"night\",\"gain\":0.71}");
    assertThat(without("text", tree.get("try").get(0)))
        .isEqualTo(
            "{\"act\":\"press-home\",\"ref\":\"R1\",\"pin\":\"2\",\"holes\":[\"b15\"],"
                + "\"minutes\":0.2}");
    assertThat(without("text", tree.get("cautions").get(0)))
        .isEqualTo("{\"ref\":\"D1\",\"kind\":\"over-limit\"}");
    assertThat(tree.get("marks").toString())
        .isEqualTo("{\"wiring\":53,\"readings\":40,\"total\":93,\"of\":100}");
  }

  @Test
  void writesFindingsOfTheRecordFirst() {
    var findings = tree(mark()).get("findings");
    assertThat(findings.get(0).get("kind").stringValue()).isEqualTo("other-exercise");
    assertThat(findings.get(1).toString())
        .isEqualTo(
            "{\"at\":\"/build/placed\",\"kind\":\"part-missing\",\"text\":\"S1 is not placed"
                + " yet.\"}");
  }

  @Test
  void writesReadingsWithWhatIsKnown() {
    var readings = tree(mark()).get("readings");
    assertThat(readings.get(0).toString())
        .isEqualTo(
            "{\"id\":\"supply\",\"measured\":5.01,\"unit\":\"V\",\"expected\":5,\"low\":4.9,"
                + "\"high\":5.1,\"worst\":[4.85,5.15],\"asBuilt\":{\"expected\":5,\"low\":4.9,"
                + "\"high\":5.1},\"verdict\":\"within\"}");
    assertThat(without("text", readings.get(1)))
        .isEqualTo(
            "{\"id\":\"across-r1\",\"measured\":\"OL\",\"unit\":\"V\",\"verdict\":\"over-range\"}");
    assertThat(without("text", readings.get(2)))
        .isEqualTo("{\"id\":\"across-moon\",\"unit\":\"V\",\"verdict\":\"unreadable\"}");
    assertThat(readings.get(3).toString())
        .isEqualTo(
            "{\"id\":\"moon\",\"measured\":\"lit\",\"expected\":\"lit\","
                + "\"asBuilt\":{\"expected\":\"dark\",\"floating\":true},\"verdict\":\"outside\","
                + "\"text\":\"This value does not fit this build as entered.\"}");
  }

  @Test
  void saysWhenWiringMarksAreHeldAndNotOtherwise() {
    var held = mark(new Points(60, 40, 100, true), Optional.empty());
    assertThat(tree(held).get("marks").get("held").booleanValue()).isTrue();
    assertThat(tree(held).has("next")).isFalse();
  }

  @Test
  void fitsItsSchema() {
    assertThat(DocumentSchemaTest.schema("mark").validate(tree(mark()))).isEmpty();
    for (String field : List.of("engine", "wiring", "marks")) {
      JsonNode lacking = tree(mark()).without(field);
      assertThat(DocumentSchemaTest.schema("mark").validate(lacking)).as(field).isNotEmpty();
    }
  }

  @Test
  void givesTheSameBytesForTheSameMark() {
    assertThat(MarkDocument.bytes(tree(mark()))).isEqualTo(MarkDocument.bytes(tree(mark())));
    assertThat(new String(MarkDocument.bytes(tree(mark())), StandardCharsets.UTF_8))
        .startsWith("{\"engine\":\"1.1.0\",\"priors\":\"start\",\"findings\":[{\"at\":");
  }

  @Test
  void namesPlacesOfEverySortByTheirFields() {
    var strips = new Place.OfStrips(new Hole(1, "a", 5), new Hole(1, "a", 6));
    assertThat(place(new Place.Nowhere())).isEqualTo("{\"alike\":[]}");
    assertThat(place(new Place.OfPart("D1"))).isEqualTo("{\"ref\":\"D1\",\"alike\":[]}");
    assertThat(place(new Place.OfSupply("P1"))).isEqualTo("{\"ref\":\"P1\",\"alike\":[]}");
    assertThat(place(new Place.OfReading("moon"))).isEqualTo("{\"reading\":\"moon\",\"alike\":[]}");
    assertThat(place(new Place.OfLink(1)))
        .isEqualTo("{\"link\":1,\"holes\":[\"a21\",\"-a21\"],\"alike\":[]}");
    assertThat(place(strips)).isEqualTo("{\"holes\":[\"a5\",\"a6\"],\"alike\":[]}");
  }

  @Test
  void saysHowAPartIsDeadAndInWhichOrderPinsReallyAre() {
    var part = new Place.OfPart("D1");
    var dead = new Suspect.Guess("dead-part", List.of(), Double.NaN, "open", 0.5);
    var swapped = new Suspect.Guess("swapped-pins", List.of(), Double.NaN, "k a", 0.25);
    var suspect = new Suspect(part, List.of(dead, swapped), 0.75, List.of());
    ObjectNode tree = tree(with(new Diagnosis(List.of(suspect), Optional.empty(), List.of())));
    assertThat(tree.at("/suspects/0/how").stringValue()).isEqualTo("open");
    assertThat(tree.at("/suspects/0/kinds/1/order").toString()).isEqualTo("[\"k\",\"a\"]");
    assertThat(DocumentSchemaTest.schema("mark").validate(tree)).isEmpty();
  }

  @Test
  void namesWhatLooksTheSame() {
    var guess = new Suspect.Guess("reversed", List.of(), Double.NaN, "", 0.5);
    var one = new Suspect(new Place.OfPart("D1"), List.of(guess), 0.5, List.of(1));
    var other = new Suspect(new Place.OfPart("R1"), List.of(guess), 0.5, List.of(0));
    var diagnosis = new Diagnosis(List.of(one, other), Optional.empty(), List.of());
    ObjectNode tree = tree(with(diagnosis));
    assertThat(tree.at("/suspects/0/alike").toString()).isEqualTo("[1]");
    assertThat(tree.at("/suspects/0/text").stringValue())
        .endsWith("These readings fit R1 as well.");
  }

  private static String place(Place place) {
    var guess = new Suspect.Guess("any", List.of(), Double.NaN, "", 0.5);
    var suspect = new Suspect(place, List.of(guess), 0.5, List.of());
    var diagnosis = new Diagnosis(List.of(suspect), Optional.empty(), List.of());
    var entry = (ObjectNode) tree(with(diagnosis)).get("suspects").get(0);
    return entry.remove(List.of("kind", "probability", "kinds", "text")).toString();
  }

  private static String without(String field, JsonNode entry) {
    var copy = (ObjectNode) entry.deepCopy();
    assertThat(copy.get(field).stringValue()).isNotBlank();
    copy.remove(field);
    if (copy.has("or")) {
      copy.get("or").forEach(other -> ((ObjectNode) other).remove(field));
    }
    return copy.toString();
  }

  private static ObjectNode tree(Mark mark) {
    return MarkDocument.tree(REQUEST, mark, Messages.english());
  }

  private static Mark mark() {
    var next =
        new NextReading(
            new Measure.Volts(Probe.at(new Pin("R1", "2")), Probe.at(new Hole(1, "f", 13))),
            "night",
            0.71);
    return mark(new Points(53, 40, 100, false), Optional.of(next));
  }

  private static Mark mark(Points points, Optional<NextReading> next) {
    var place = new Place.OfLead(new Pin("R1", "2"));
    var here = List.of(new Hole(1, "b", 15));
    var kinds =
        List.of(
            new Suspect.Guess("open-contact", here, Double.NaN, "", 0.5),
            new Suspect.Guess(
                "wrong-hole", List.of(new Hole(1, "b", 14)), Double.NaN, "", 0.12345678));
    var suspect = new Suspect(place, kinds, 0.62345678, List.of());
    var acts = List.of(new Act("press-home", place, here, 0.2));
    return mark(points, new Diagnosis(List.of(suspect), next, acts));
  }

  private static Mark with(Diagnosis diagnosis) {
    return mark(new Points(53, 40, 100, false), diagnosis);
  }

  private static Mark mark(Points points, Diagnosis diagnosis) {
    return new Mark(
        "1.1.0",
        "start",
        List.of(Finding.of("/build/placed", "part-missing", "S1")),
        new WiringReport(false, 0.875, List.of(difference())),
        readings(),
        diagnosis,
        List.of(new Caution("over-limit", "D1", List.of("D1", "31 mA"))),
        points);
  }

  private static Difference difference() {
    var move =
        new Repair.MoveLead(
            new Pin("D1", "k"),
            Optional.of(new Hole(1, "c", 18)),
            "switched",
            "moon",
            List.of(new Hole(1, "b", 17), new Hole(1, "a", 17)),
            Slip.COLUMN_OFF);
    return new Difference(move, List.of(new Repair.PlacePart("S1")));
  }

  private static List<Judged> readings() {
    var five = new Shown.Amount(5.0000004, Unit.VOLT);
    var expected = Optional.of(new Expected(five, 4.9, 5.1, 4.85, 5.15, false));
    var lit = new Expected(new Shown.Word("lit"), 0, 0, 0, 0, false);
    var dark = new Expected(new Shown.Word("dark"), 0, 0, 0, 0, true);
    Optional<Shown> shown = Optional.of(new Shown.Amount(5.01, Unit.VOLT));
    return List.of(
        new Judged(reading("supply"), shown, Optional.empty(), expected, expected, Verdict.WITHIN),
        new Judged(
            reading("across-r1"),
            Optional.of(new Shown.OverRange()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Verdict.OVER_RANGE),
        new Judged(
            reading("across-moon"),
            Optional.empty(),
            Optional.of(Parsed.Why.UNIT_NEEDED),
            Optional.empty(),
            Optional.empty(),
            Verdict.UNREADABLE),
        new Judged(
            reading("moon"),
            Optional.of(new Shown.Word("lit")),
            Optional.empty(),
            Optional.of(lit),
            Optional.of(dark),
            Verdict.OUTSIDE));
  }

  private static Reading reading(String id) {
    return REQUEST.exercise().readings().stream()
        .filter(reading -> reading.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
