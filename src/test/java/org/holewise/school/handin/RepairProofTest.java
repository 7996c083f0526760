package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.sheet.KeptMark;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What one change between two hand-ins proves of the first, and what proves nothing. */
@Tag("fast")
class RepairProofTest {

  private static final LibraryExercise MOONLIGHT = shipped("stage-moonlight");

  private static final String SOUND =
      BuildLines.write(MOONLIGHT.checked(), MOONLIGHT.exercise()) + "\n";

  private static LibraryExercise shipped(String slug) {
    try {
      var made = HandInContract.libraryType().getDeclaredConstructor();
      made.setAccessible(true);
      return ((Library) made.newInstance()).find(slug).orElseThrow();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The loop is open, as the meter shows it. */
  private static String open(String lines) {
    return lines
        .replaceAll("(across-r1|across-moon|switch-open) .*", "$1 0.00 V")
        .replaceAll("current .*", "current 0.00 mA")
        .replace("moon lit", "moon dark");
  }

  private static String changed(String lines, String was, String is) {
    assertThat(lines).contains(was);
    return lines.replace(was, is);
  }

  private static BenchRecord record(String lines, Exercise exercise) {
    return BuildLines.read(lines, exercise).record();
  }

  /** What is proven where the one is handed in and then the other. */
  private static Optional<Fault> proven(String before, String after) {
    Exercise exercise = MOONLIGHT.exercise();
    var was = Marked.of(exercise, record(before, exercise), Priors.start());
    var is = Marked.of(exercise, record(after, exercise), Priors.start());
    assertThat(is.mark().marks().total()).as("sound").isEqualTo(is.mark().marks().of());
    var pointed = Fault.of(was.mark()).orElse(new Fault("", ""));
    var kept = KeptMark.read(new String(was.document(), StandardCharsets.UTF_8));
    return RepairProof.of(
        exercise, record(before, exercise), kept, pointed, record(after, exercise));
  }

  @Nested
  class OneChangeOfTheLayoutThatTheRecordShowed {

    @Test
    void provesTheLeadThatWasMoved() {
      assertThat(proven(open(changed(SOUND, "D1 c15 c17", "D1 c16 c17")), SOUND))
          .contains(new Fault("column-off", "D1.a"));
    }

    @Test
    void provesTheLinkWhoseEndWasMoved() {
      assertThat(proven(open(changed(SOUND, "link +a10 a10", "link +a10 a11")), SOUND))
          .contains(new Fault("column-off", "link 1"));
      assertThat(proven(open(changed(SOUND, "link +a10 a10", "link a11 +a10")), SOUND))
          .contains(new Fault("column-off", "link 1"));
    }

    @Test
    void tellsWhatSortOfSlipItWas() {
      assertThat(proven(open(changed(SOUND, "D1 c15 c17", "D1 h15 c17")), SOUND))
          .contains(new Fault("across-groove", "D1.a"));
      assertThat(proven(open(changed(SOUND, "link a21 -a21", "link a21 +a21")), SOUND))
          .contains(new Fault("other-rail", "link 2"));
      assertThat(proven(open(changed(SOUND, "D1 c15 c17", "D1 c25 c17")), SOUND))
          .contains(new Fault("wrong-strip", "D1.a"));
    }

    @Test
    void provesTheLinkThatWasMissing() {
      assertThat(proven(open(changed(SOUND, "link +a10 a10\n", "")), SOUND))
          .contains(new Fault("link-missing", "+a10 a10"));
    }

    @Test
    void provesTheLinkThatWasTooMany() {
      assertThat(proven(open(SOUND + "link b15 b17\n"), SOUND))
          .contains(new Fault("link-too-many", "link 3"));
    }

    @Test
    void provesThePartThatWasMissing() {
      assertThat(proven(open(changed(SOUND, "D1 c15 c17\n", "")), SOUND))
          .contains(new Fault("part-missing", "D1"));
    }

    @Test
    void provesThePartThatWasTurned() {
      assertThat(proven(open(changed(SOUND, "D1 c15 c17", "D1 c17 c15")), SOUND))
          .contains(new Fault("wrong-strip", "D1"));
    }

    @Test
    void provesThePartThatReadAnotherValue() {
      String other = changed(SOUND, "marked 150R", "marked 1k5");
      assertThat(proven(other.replaceAll("across-r1 .*", "across-r1 0.90 V"), SOUND))
          .contains(new Fault("marked-otherwise", "R1"));
    }
  }

  @Nested
  class OneChangeOfTheRecordAlone {

    @Test
    void provesThatALeadWasElsewhereThanRecorded() {
      assertThat(proven(changed(SOUND, "D1 c15 c17", "D1 c16 c17"), SOUND))
          .contains(new Fault("wrong-hole", "D1.a"));
    }

    @Test
    void provesThatALinkWasNotRecorded() {
      assertThat(proven(changed(SOUND, "link +a10 a10\n", ""), SOUND))
          .contains(new Fault("leftover", "+a10 a10"));
    }

    @Test
    void provesThatAPartWasRecordedTheWrongWayRound() {
      assertThat(proven(changed(SOUND, "D1 c15 c17", "D1 c17 c15"), SOUND))
          .contains(new Fault("reversed", "D1"));
    }

    @Test
    void provesThatAMarkingWasMisread() {
      assertThat(proven(changed(SOUND, "marked 150R", "marked 15k"), SOUND))
          .contains(new Fault("wrong-value", "R1"));
    }
  }

  @Nested
  class OneChangeThatMakesNoOtherCircuit {

    @Test
    void provesThatTheContactWasPoor() {
      String beside = changed(SOUND, "R1 b10 b15", "R1 c10 b15");
      assertThat(proven(open(SOUND), beside)).contains(new Fault("open-contact", "R1.1"));
      assertThat(proven(open(SOUND), changed(SOUND, "link +a10 a10", "link +a10 e10")))
          .contains(new Fault("open-contact", "link 1"));
    }

    @Test
    void provesNothingWhereAPartIsTurnedThatHasNoWrongWayRound() {
      String turned = changed(SOUND, "R1 b10 b15", "R1 b15 b10");
      assertThat(proven(open(SOUND), changed(turned, "across-r1 ", "across-r1 -"))).isEmpty();
    }
  }

  @Nested
  class TheSameLayout {

    @Test
    void provesTheOneReadingThatWasTakenAnew() {
      String off = SOUND.replaceAll("across-r1 .*", "across-r1 9.99 V");
      assertThat(proven(off, SOUND).orElseThrow().place()).isEqualTo("across-r1");
      String reversed = SOUND.replaceAll("across-r1 ", "across-r1 -");
      assertThat(proven(reversed, SOUND)).contains(new Fault("meter-leads", "across-r1"));
    }

    @Test
    void provesTheTwoReadingsThatWereExchanged() {
      var readings = record(SOUND, MOONLIGHT.exercise()).readings();
      String one = readings.get("across-r1").text();
      String other = readings.get("across-moon").text();
      String exchanged =
          changed(
              changed(SOUND, "across-r1 " + one, "across-r1 " + other),
              "across-moon " + other,
              "across-moon " + one);
      assertThat(proven(exchanged, SOUND))
          .contains(new Fault("readings-exchanged", "across-r1 across-moon"));
    }

    @Test
    void provesNothingWhereManyReadingsAreNew() {
      assertThat(proven(open(SOUND), SOUND)).isEmpty();
    }

    @Test
    void provesNothingWhereAReadingWasMissing() {
      assertThat(proven(SOUND.replaceAll("across-r1 .*\n", ""), SOUND)).isEmpty();
    }
  }

  @Nested
  class TwoChanges {

    @Test
    void proveNothing() {
      String lead = changed(SOUND, "D1 c15 c17", "D1 c16 c17");
      assertThat(proven(open(changed(lead, "R1 b10 b15", "R1 b10 b16")), SOUND)).isEmpty();
      assertThat(proven(open(changed(lead, "link +a10 a10", "link +a10 a11")), SOUND)).isEmpty();
      assertThat(proven(open(changed(lead, "marked 150R", "marked 1k5")), SOUND)).isEmpty();
      assertThat(proven(open(changed(SOUND, "link +a10 a10", "link +a11 a11")), SOUND)).isEmpty();
    }

    @Test
    void areNotMadeByAMarkingThatWasReadAtLast() {
      String lead = changed(SOUND, "D1 c15 c17", "D1 c16 c17");
      assertThat(proven(open(changed(lead, " marked 150R", "")), SOUND))
          .contains(new Fault("column-off", "D1.a"));
    }
  }

  @Test
  void withoutALayoutNothingIsProven() {
    String readings = open(SOUND).replaceAll("(?m)^(P1|R1|D1|S1|link) .*\n", "");
    assertThat(record(readings, MOONLIGHT.exercise()).build()).isEmpty();
    assertThat(proven(readings, SOUND)).isEmpty();
  }
}
