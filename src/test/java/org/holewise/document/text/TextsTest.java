package org.holewise.document.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.holewise.document.BuildDocument;
import org.holewise.document.ExerciseDocument;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class TextsTest {
  private static final Exercise EXERCISE =
      ExerciseDocument.yaml(new String(file("stage-cue.yaml"), StandardCharsets.UTF_8))
          .orThrow()
          .exercise();
  private static final Build BUILD =
      BuildDocument.json(file("stage-cue-build.json"), EXERCISE).orThrow().build().orElseThrow();
  private static final Texts TEXTS =
      new Texts(Messages.english(), EXERCISE, Optional.of(BUILD), false);

  private static byte[] file(String name) {
    try (var in = TextsTest.class.getResourceAsStream("/exercises/" + name)) {
      return Objects.requireNonNull(in, name).readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Hole hole(String written) {
    return Hole.read(written).orElseThrow();
  }

  @Nested
  class Repairs {

    @ParameterizedTest
    @EnumSource(Slip.class)
    void ofALeadSayWhereItIsWhereItBelongsAndWhereToPutIt(Slip slip) {
      assertThat(TEXTS.repair(lead("R1", "2", "b18", "base", "return", slip)))
          .startsWith("R1's lead in b18 is ")
          .contains("It belongs on net “base” (with R2.1 and Q1.b)")
          .endsWith("move it to b17 or a17.");
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void ofALinkNameItByItsNumberAndHole(Slip slip) {
      var move =
          new Repair.MoveLinkEnd(1, 0, hole("a19"), "return", "", List.of(hole("b18")), slip);
      assertThat(TEXTS.repair(move))
          .startsWith("Link 2's end in a19 is ")
          .endsWith("move it to b18.");
    }

    @Test
    void nameTheLeadOfAPolarPartByWhatItIs() {
      assertThat(TEXTS.repair(lead("Q1", "b", "d18", "base", "", Slip.COLUMN_OFF)))
          .isEqualTo(
              "Q1's base in d18 is a column off. It belongs on net “base” (with R1.2 and R2.1):"
                  + " move it to b17 or a17.");
    }

    @Test
    void ofALeadWithoutHoleAskForOne() {
      var move =
          new Repair.MoveLead(
              new Pin("R1", "2"), Optional.empty(), "base", "", List.of(), Slip.ELSEWHERE);
      assertThat(TEXTS.repair(move))
          .isEqualTo(
              "R1's lead 2 has no hole yet. It belongs on net “base” (with R2.1 and Q1.b): put it"
                  + " into a free hole there.");
    }

    @Test
    void ofALeadThatShouldTouchNothingSaySo() {
      assertThat(TEXTS.repair(lead("R1", "2", "b18", "", "return", Slip.ELSEWHERE)))
          .isEqualTo(
              "R1's lead in b18 should touch nothing. Move it to a strip of its own: b17 or a17.");
    }

    @Test
    void ofLinksAndPartsSayWhatToDo() {
      var add = new Repair.AddLink(List.of(hole("a10")), List.of(hole("+a10")), "supply", false);
      var bridge = new Repair.AddLink(List.of(hole("+j31")), List.of(hole("+j33")), "supply", true);
      var out = new Repair.RemoveLink(3, new Link(hole("e16"), hole("f16")), "collector", "lamp");
      assertThat(TEXTS.repair(add))
          .endsWith("Lay one from a10 to +a10.")
          .contains("link is missing");
      assertThat(TEXTS.repair(bridge)).contains("gap").endsWith("Lay a link from +j31 to +j33.");
      assertThat(TEXTS.repair(out))
          .isEqualTo(
              "Link 4 from e16 to f16 joins net “collector” (with D1.k and Q1.c) to net “lamp”"
                  + " (with R3.2 and D1.a), and they should be apart. Take it out.");
      assertThat(TEXTS.repair(new Repair.PlacePart("R2")))
          .isEqualTo("R2 is on the parts list and not on the board. Place it.");
    }

    private static Repair lead(
        String ref, String pin, String from, String net, String joins, Slip slip) {
      return new Repair.MoveLead(
          new Pin(ref, pin),
          Optional.of(hole(from)),
          net,
          joins,
          List.of(hole("b17"), hole("a17")),
          slip);
    }
  }

  @Nested
  class Suspects {
    private static final Place LEAD = new Place.OfLead(new Pin("R1", "2"));

    @Test
    void beginWithThePlaceAndEndWithAnAct() {
      assertThat(suspect(LEAD, "open-contact"))
          .isEqualTo(
              "Look at R1's lead in b17. It may not touch its strip. Press the lead home, then"
                  + " measure again.");
      assertThat(suspect(new Place.OfLink(3), "open-contact"))
          .startsWith("Look at link 4 from e16 to f16. ");
      assertThat(suspect(LEAD, "wrong-hole", "b18")).contains("may really sit in b18");
      assertThat(suspect(new Place.OfRail(1, "+a"), "rail-gap", "+a31", "+a33"))
          .startsWith("Look at rail +a between +a31 and +a33. ");
      assertThat(suspect(new Place.OfReading("base"), "meter-leads"))
          .startsWith("Look at the reading “Base to emitter on the cue”. Red and black ");
    }

    @ParameterizedTest
    @CsvSource({
      "poor-contact, lead", "poor-contact, link", "wrong-hole, lead", "wrong-hole, link",
      "wrong-value, part", "reversed, part", "supply-off, supply", "supply-low, supply",
      "supply-reversed, supply", "dead-part, part", "touching, strips", "leftover, strips",
      "meter-place, reading", "meter-scale, reading", "meter-fuse, reading", "meter-mode, reading"
    })
    void haveASentenceOfTheirOwnForEveryKind(String kind, String place) {
      assertThat(suspect(at(place), kind)).startsWith("Look at ").matches(".*\\. .*\\.");
    }

    @Test
    void ofAKindUnknownStillSayWhere() {
      assertThat(suspect(LEAD, "gremlin")).isEqualTo("Look at R1's lead in b17.");
    }

    @Test
    void ofNothingSaySoTheFirmerTheLikelier() {
      assertThat(nothing(0.9)).startsWith("Nothing points to a fault");
      assertThat(nothing(0.1)).startsWith("Perhaps nothing is wrong");
    }

    @Test
    void withoutALayoutSpeakOfTheSchematic() {
      var guess = new Suspect.Guess("wrong-hole", List.of(), Double.NaN, "", 0.5);
      var texts = new Texts(Messages.english(), EXERCISE, Optional.empty(), false);
      assertThat(texts.suspect(new Suspect(LEAD, List.of(guess), 0.5, List.of())))
          .isEqualTo(
              "Look at R1's lead 2. It may not be where the schematic has it. Follow the lead from"
                  + " hole to hole, and put it right.");
    }

    private static String nothing(double probability) {
      var guess = new Suspect.Guess("none", List.of(), Double.NaN, "", probability);
      return TEXTS.suspect(
          new Suspect(new Place.Nowhere(), List.of(guess), probability, List.of()));
    }

    @Test
    void tellOnlyTheTeacherWhatAPartReallyIs() {
      var guess = new Suspect.Guess("wrong-value", List.of(), 4700, "", 0.5);
      var suspect = new Suspect(new Place.OfPart("R1"), List.of(guess), 0.5, List.of());
      var teacher = new Texts(Messages.english(), EXERCISE, Optional.of(BUILD), true);
      assertThat(teacher.suspect(suspect)).contains("It behaves like 4.7 kΩ.");
      assertThat(TEXTS.suspect(suspect)).contains("another value").doesNotContain("4.7");
    }

    @Test
    void sayHowAPartIsDead() {
      var guess = new Suspect.Guess("dead-part", List.of(), Double.NaN, "short", 0.5);
      var suspect = new Suspect(new Place.OfPart("D1"), List.of(guess), 0.5, List.of());
      assertThat(TEXTS.suspect(suspect)).contains("Power off");
    }

    /** Place, then evidence, then act: a student's in words, a teacher's in figures. */
    @Test
    void sayWhichReadingsSpeakForThemBetweenPlaceAndAct() {
      assertThat(TEXTS.suspect(shown(Evidence.Reads.FAR_HIGH)))
          .isEqualTo(
              "Look at R1's lead in b17. It may not touch its strip: for what was entered, “Base to"
                  + " emitter on the cue” reads far too high and a reading that was asked for reads"
                  + " far too high. Press the lead home, then measure again.");
      var teacher = new Texts(Messages.english(), EXERCISE, Optional.of(BUILD), true);
      assertThat(teacher.suspect(shown(Evidence.Reads.FAR_HIGH)))
          .contains("“Base to emitter on the cue” reads 4.31 V where 724 mV would fit and a");
    }

    @ParameterizedTest
    @EnumSource(Evidence.Reads.class)
    void tellAStudentNoFigureOfWhatWouldFit(Evidence.Reads reads) {
      assertThat(TEXTS.suspect(shown(reads)))
          .contains("“Base to emitter on the cue” ")
          .doesNotContain("724", "0.724", "mV", "{", "would fit");
    }

    @ParameterizedTest
    @EnumSource(Evidence.Bearing.class)
    void areWholeSentencesWhateverTheReadingsSay(Evidence.Bearing bearing) {
      var signs = shown(Evidence.Reads.LOW).evidence().signs();
      var evidence = new Evidence(bearing, bearing == Evidence.Bearing.FOR ? signs : List.of());
      assertThat(TEXTS.suspect(with(evidence)))
          .startsWith("Look at R1's lead in b17. It may not touch its strip")
          .endsWith(". Press the lead home, then measure again.")
          .doesNotContain("..", ":.", "  ", "{");
    }

    private static Suspect shown(Evidence.Reads reads) {
      var measured = new Shown.Amount(4.31, Unit.VOLT);
      Optional<Shown> fits = Optional.of(new Shown.Amount(0.7243, Unit.VOLT));
      return with(
          new Evidence(
              Evidence.Bearing.FOR,
              List.of(
                  new Evidence.Sign("base", reads, false, measured, fits),
                  new Evidence.Sign("x1", reads, false, measured, fits))));
    }

    private static Suspect with(Evidence evidence) {
      var guess = new Suspect.Guess("open-contact", List.of(), Double.NaN, "", 0.5);
      return new Suspect(LEAD, List.of(guess), 0.5, List.of(), evidence);
    }

    private static Place at(String place) {
      return switch (place) {
        case "lead" -> LEAD;
        case "link" -> new Place.OfLink(0);
        case "part" -> new Place.OfPart("D1");
        case "supply" -> new Place.OfSupply("B1");
        case "strips" -> new Place.OfStrips(hole("a5"), hole("a6"));
        default -> new Place.OfReading("base");
      };
    }

    private static String suspect(Place place, String kind, String... holes) {
      var at = List.of(holes).stream().map(TextsTest::hole).toList();
      var guess = new Suspect.Guess(kind, at, Double.NaN, "", 0.5);
      return TEXTS.suspect(new Suspect(place, List.of(guess), 0.5, List.of()));
    }
  }

  @Nested
  class TheNextReading {
    private static final Probe LEAD = Probe.at(new Pin("R1", "2"));
    private static final Probe HOLE = Probe.at(hole("e17"));

    @Test
    void namesConditionRedAndBlack() {
      assertThat(next(new Measure.Volts(LEAD, HOLE)))
          .isEqualTo(
              "Set up “cue” first. Measure volts: red on the bare metal of R1's lead in b17, black"
                  + " on a stub of wire in e17.");
    }

    @Test
    void cautionsWhereTheSupplyMustBeOffOrTheLoopOpened() {
      assertThat(next(new Measure.Ohms(LEAD, HOLE, false)))
          .contains("Power off, and take one lead of each supply out of the board.")
          .contains("red on the bare metal of R1's lead in b17, black on a stub of wire in e17");
      assertThat(next(new Measure.Joined(LEAD, HOLE))).contains("Supply off.");
      assertThat(next(new Measure.Amps(new Pin("R1", "2"))))
          .contains("Power off. ")
          .contains("the meter’s socket for mA")
          .contains("Pull out R1's lead in b17, ")
          .contains("never across anything")
          .endsWith("the red lead into the socket for volts.");
      var other = Probe.at(new Pin("R1", "1"));
      assertThat(next(new Measure.Ohms(LEAD, other, true)))
          .contains("Supply off. Take R1 out of the board");
      assertThat(next(new Measure.Seen("D1"))).endsWith("Look at D1: is it lit, dim or dark?");
    }

    private static String next(Measure measure) {
      return TEXTS.next(new NextReading(measure, "cue", 0.7));
    }
  }

  @Nested
  class Others {

    @Test
    void findingsNamePinsByWhatTheyAre() {
      assertThat(TEXTS.finding(Finding.of("/x", "hole-taken", "Q1.c", "d16", "link 4")))
          .isEqualTo(
              "Look at d16: Q1's collector and link 4 cannot both be in it. Read both holes"
                  + " again.");
      assertThat(TEXTS.finding(Finding.of("/x", "marked-unreadable", "R1", "4.7k{0}")))
          .contains("“4.7k{0}”");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "off-board",
          "rail-gap",
          "rail-side",
          "hole-taken",
          "same-strip",
          "part-twice",
          "ref-unknown",
          "part-missing",
          "pin-unknown",
          "lead-missing",
          "pin1-alone",
          "link-in-strip",
          "rails-joined",
          "layout-missing",
          "layout-doubtful",
          "marked-otherwise",
          "marked-unreadable",
          "other-exercise",
          "other-board",
          "other-meter",
          "unknown-reading",
          "extra-id-taken",
          "unknown-condition",
          "unknown-ref",
          "unknown-pin",
          "no-lamp",
          "probe-off-board"
        })
    void findingsOfEveryKindHaveASentence(String kind) {
      assertThat(TEXTS.finding(Finding.of("/x", kind, "R1.1", "2", "3", "4", "5"))).endsWith(".");
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void verdictsAreWords(Verdict verdict) {
      assertThat(TEXTS.verdict(verdict)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource(Parsed.Why.class)
    void unreadableReadingsSayWhatToWrite(Parsed.Why why) {
      assertThat(TEXTS.unreadable(why)).contains(". ").endsWith(".");
    }

    @ParameterizedTest
    @CsvSource({
      "press-home, lead",
      "press-home, link",
      "other-hole, lead",
      "other-hole, link",
      "look-at, lead",
      "check-value, part",
      "turn-round, part",
      "switch-on, supply",
      "check-supply, supply",
      "check-pins, part",
      "change-part, part",
      "part-leads, strips",
      "swap-meter-leads, reading",
      "measure-again, reading"
    })
    void actsAreOneSentenceToDo(String kind, String place) {
      var act = new Act(kind, Suspects.at(place), List.of(), 0.2);
      assertThat(TEXTS.act(act)).endsWith(".").doesNotContain("{");
    }

    @Test
    void aGapIsBridgedBetweenItsHoles() {
      var act =
          new Act(
              "bridge-gap", new Place.OfRail(1, "+a"), List.of(hole("+a31"), hole("+a33")), 0.5);
      assertThat(TEXTS.act(act)).isEqualTo("Bridge the gap with a link between +a31 and +a33.");
    }

    @ParameterizedTest
    @CsvSource({
      "over-limit, D1",
      "far-over-limit, D1",
      "over-power, R1",
      "reverse-volts, D1",
      "supply-shorted, B1",
      "supply-shorted, ''",
      "high-voltage, ''",
      "short-circuit-current, B1",
      "unsolvable, ''"
    })
    void cautionsSayWhatToDoAndSendToTheTeacherOrThePath(String kind, String ref) {
      var parts = ref.isEmpty() ? List.<String>of() : List.of(ref, "31 mA");
      assertThat(TEXTS.caution(new Caution(kind, ref, parts)))
          .containsAnyOf("teacher", "before you switch on")
          .doesNotContain("31 mA");
    }
  }
}
