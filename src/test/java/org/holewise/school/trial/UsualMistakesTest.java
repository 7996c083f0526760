package org.holewise.school.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.wiring.Repair;
import org.holewise.school.sheet.Shipped;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The usual mistakes with the exercises that come along (common practice: what teachers of a first
 * course see most). Where the record hides a mistake, the readings must bring it among the first
 * three suspects; where it shows it, it is the first difference.
 */
@Tag("fast")
class UsualMistakesTest {
  private static final int FIRST_OF_ALL = 3;
  private static final int TO_EACH = 3;

  @ParameterizedTest
  @CsvSource({
    "stage-bridge, column-off, OfLead[pin=T1.1], wrong-hole",
    "stage-bridge, wrong-part, OfPart[ref=R3], wrong-value",
    "stage-twilight, ends, OfPart[ref=P1], swapped-pins",
    "stage-twilight, wrong-part, OfPart[ref=R2], wrong-value",
    "stage-twilight, loose-sensor, OfLead[pin=R1.1], wrong-hole",
    "stage-reference, turned-zener, OfPart[ref=D1], reversed",
    "stage-reference, wrong-part, OfPart[ref=R1], wrong-value",
    "stage-curtain, column-off, OfLead[pin=S1.2], wrong-hole",
    "stage-curtain, turned-lamp, OfPart[ref=D1], reversed",
    "stage-curtain, wrong-part, OfPart[ref=R2], wrong-value",
    "stage-hiss, wrong-capacitor, OfPart[ref=C1], wrong-value",
    "stage-hiss, wrong-part, OfPart[ref=R1], wrong-value",
    "stage-intercom, wrong-part, OfPart[ref=R2], wrong-value",
    "stage-intercom, leads-exchanged, OfPart[ref=Q1], swapped-pins",
    "stage-intercom, loose-input, OfLead[pin=C1.-], wrong-hole",
    "stage-voices, loose-link, OfLink[link=4], open-contact",
    "stage-voices, wrong-part, OfPart[ref=R2], wrong-value",
    "stage-pulse, wrong-part, OfPart[ref=R2], wrong-value",
    "stage-pulse, turned-lamp, OfPart[ref=D1], reversed",
    "stage-pulse, wrong-capacitor, OfPart[ref=C1], wrong-value",
    "stage-chase, turned-lamp, OfPart[ref=D4], reversed"
  })
  void thatTheRecordHidesAreAmongTheFirstSuspects(
      String slug, String start, String place, String kind) {
    Mark mark = Shipped.mark(slug, Shipped.lines(slug, start));
    assertThat(mark.wiring().matches()).isTrue();
    assertThat(mark.diagnosis().suspects().subList(0, FIRST_OF_ALL))
        .anyMatch(suspect -> suspect.place().toString().equals(place) && has(suspect, kind));
  }

  private static boolean has(Suspect suspect, String kind) {
    return suspect.kinds().stream().anyMatch(guess -> guess.kind().equals(kind));
  }

  @ParameterizedTest
  @CsvSource({
    "stage-bridge, no-return, AddLink",
    "stage-reference, column-off, MoveLead",
    "stage-hiss, column-off, MoveLead",
    "stage-voices, shifted-chip, PlacePart",
    "stage-chase, no-clock, AddLink",
    "stage-chase, clear-high, MoveLinkEnd"
  })
  void thatTheRecordShowsAreTheFirstDifference(String slug, String start, String repair) {
    Mark mark = Shipped.mark(slug, Shipped.lines(slug, start));
    assertThat(mark.wiring().matches()).isFalse();
    assertThat(mark.wiring().differences()).hasSize(1);
    var difference = mark.wiring().differences().get(0);
    Set<String> ways =
        difference.or().stream().map(UsualMistakesTest::kind).collect(Collectors.toSet());
    ways.add(kind(difference.repair()));
    assertThat(ways).contains(repair);
  }

  private static String kind(Repair repair) {
    return repair.getClass().getSimpleName();
  }

  /** Beside the first three exercises, whose slips have tests of their own. */
  @Test
  void belongThreeToEachExercise() {
    for (String slug : Shipped.SLUGS) {
      if (!List.of("stage-cue", "stage-dimmer", "stage-moonlight").contains(slug)) {
        assertThat(Shipped.starts(slug)).as(slug).hasSize(2 + TO_EACH);
      }
    }
  }
}
