package org.holewise.engine.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.diagnosis.Evidence.Bearing;
import org.holewise.engine.diagnosis.Evidence.Reads;
import org.holewise.engine.diagnosis.Evidence.Sign;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchDraft;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Judged;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Which readings are said to speak for a fault. */
@Tag("fast")
class EvidenceTest {
  private static final Exercise LAMP = Samples.lamp();
  private static final Exercise LADDER = Samples.ladder(9);

  private static Mark mark(Exercise exercise, BenchDraft draft) {
    return Marking.mark(exercise, draft.record(), Priors.start(), Set.of());
  }

  private static BenchDraft dark() {
    return Samples.lampBuild(LAMP)
        .read("supply", "5.00 V")
        .read("lamp", "5.00 V")
        .read("drop", "0.00 V")
        .read("loop", "0.00 mA")
        .read("glow", "dark");
  }

  private static Suspect suspect(Mark mark, Place place) {
    return mark.diagnosis().suspects().stream()
        .filter(suspect -> suspect.place().equals(place))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void isWhatDoesNotFitTheRecordAndFitsTheFaultTheFurthestOffFirst() {
    Mark mark = mark(LAMP, dark());
    Evidence evidence = suspect(mark, new Place.OfPart("D1")).evidence();
    assertThat(evidence.bearing()).isEqualTo(Bearing.FOR);
    assertThat(evidence.signs())
        .extracting(Sign::reading)
        .containsOnly("lamp", "drop", "loop", "glow");
    assertThat(evidence.signs().get(3).reading()).isEqualTo("glow");
    assertThat(sign(evidence, "lamp").reads()).isEqualTo(Reads.FAR_HIGH);
    assertThat(sign(evidence, "drop").reads()).isEqualTo(Reads.NOTHING);
    assertThat(sign(evidence, "glow").reads()).isEqualTo(Reads.OTHERWISE);
  }

  @Test
  void namesWhatTheTableOfReadingsNames() {
    Mark mark = mark(LAMP, dark());
    Judged lamp = mark.readings().get(1);
    Sign sign = sign(suspect(mark, new Place.OfPart("D1")).evidence(), "lamp");
    assertThat(lamp.reading().id()).isEqualTo("lamp");
    assertThat(sign.expected()).isPresent().isEqualTo(lamp.asBuilt().map(Expected::shown));
    assertThat(sign.measured()).isEqualTo(lamp.measured().orElseThrow());
  }

  @Test
  void ofExchangedMeterLeadsIsThatReadingAlone() {
    var sound = Samples.read(LAMP, Samples.lampBuild(LAMP));
    var draft = Samples.lampBuild(LAMP);
    sound.readings().forEach((id, written) -> draft.read(id, written.text()));
    String drop = sound.readings().get("drop").text();
    Evidence evidence =
        suspect(mark(LAMP, draft.read("drop", "-" + drop)), new Place.OfReading("drop")).evidence();
    assertThat(evidence.signs()).extracting(Sign::reading).containsExactly("drop");
    assertThat(evidence.signs().get(0).reads()).isEqualTo(Reads.WRONG_SIGN);
    assertThat(evidence.signs().get(0).beside()).isFalse();
  }

  /** Five per cent of a battery hide twelve of a divider; its own supply's reading does not. */
  @Test
  void mayBeOffBesideTheOtherReadingsOnly() {
    var sound = Samples.read(LADDER, Samples.ladderBuild(LADDER));
    String supply = sound.readings().get("supply").text();
    double first = Double.parseDouble(sound.readings().get("first").text().replace(" V", ""));
    var draft = Samples.ladderBuild(LADDER).read("supply", supply);
    draft.read("first", String.format(Locale.ROOT, "%.2f V", first * 1.12));
    Evidence evidence = suspect(mark(LADDER, draft), new Place.OfReading("first")).evidence();
    assertThat(evidence.bearing()).isEqualTo(Bearing.FOR);
    assertThat(evidence.signs()).singleElement().matches(Sign::beside);
    assertThat(evidence.signs().get(0).reads()).isEqualTo(Reads.HIGH);
  }

  @Test
  void ofASoundBuildSpeaksForNoFault() {
    var draft = Samples.lampBuild(LAMP);
    Samples.read(LAMP, Samples.lampBuild(LAMP))
        .readings()
        .forEach((id, written) -> draft.read(id, written.text()));
    Mark mark = mark(LAMP, draft);
    assertThat(mark.diagnosis().suspects()).hasSizeGreaterThan(2);
    for (Suspect suspect : mark.diagnosis().suspects()) {
      assertThat(suspect.evidence().signs()).as("%s", suspect).isEmpty();
    }
    assertThat(suspect(mark, new Place.Nowhere()).evidence()).isEqualTo(Evidence.NONE);
  }

  /** Without readings every fault is as likely as its prior. */
  @Test
  void isNeitherForNorAgainstWhereNothingWasRead() {
    Mark mark = mark(LAMP, Samples.lampBuild(LAMP));
    Place place = new Place.OfLead(new Pin("R1", "2"));
    assertThat(suspect(mark, place).evidence().bearing()).isEqualTo(Bearing.NEITHER);
  }

  private static Sign sign(Evidence evidence, String reading) {
    return evidence.signs().stream()
        .filter(sign -> sign.reading().equals(reading))
        .findFirst()
        .orElseThrow();
  }
}
