package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import org.holewise.engine.board.Hole;
import org.holewise.school.sheet.GateAnswer.Stop;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

@Tag("fast")
class GateTest {
  static final Iterable<String> SLUGS = Shipped.SLUGS;

  private static GateAnswer check(String slug, String lines) {
    return Gate.check(Shipped.exercise(slug), Shipped.record(slug, lines));
  }

  private static String checked(String slug) {
    return Shipped.lines(slug, "checked");
  }

  @ParameterizedTest
  @FieldSource("SLUGS")
  void aSoundBuildMayBeSwitchedOn(String slug) {
    GateAnswer answer = check(slug, checked(slug));
    assertThat(answer.stops()).isEmpty();
    assertThat(answer.go()).isTrue();
    assertThat(answer.missing()).isEmpty();
  }

  /** A link beside the resistor that keeps the current down, in every exercise that has a lamp. */
  @ParameterizedTest
  @CsvSource({
    "stage-cue, link i9 i14, D1, far-over-limit",
    "stage-cue, link e12 e17, B1, supply-shorted",
    "stage-moonlight, link e10 e15, D1, far-over-limit"
  })
  void aBypassedResistorStops(String slug, String link, String ref, String kind) {
    GateAnswer answer = check(slug, checked(slug) + link + "\n");
    assertThat(answer.go()).isFalse();
    assertThat(answer.stops()).extracting(Stop::kind, Stop::ref).contains(tuple(kind, ref));
    assertThat(answer.highlight().ringed()).isNotEmpty();
  }

  /** In every exercise that is fed by more than a generator. */
  @ParameterizedTest
  @CsvSource({
    "stage-bridge, link +j4 -j4",
    "stage-chase, link +j4 -a4",
    "stage-cue, link +a5 -a5",
    "stage-curtain, link +a4 -a4",
    "stage-dimmer, link +j7 -j7",
    "stage-intercom, link +j4 -a4",
    "stage-moonlight, link +a5 -a5",
    "stage-pulse, link +j4 -a4",
    "stage-reference, link +a36 -a36",
    "stage-twilight, link +a4 -a4",
    "stage-voices, link +j4 -j4"
  })
  void aLinkAcrossTheRailsStopsAndIsRinged(String slug, String link) {
    GateAnswer answer = check(slug, checked(slug) + link + "\n");
    assertThat(answer.stops()).extracting(Stop::kind).contains("supply-shorted");
    assertThat(said(answer)).contains("shorted").contains("part it");
  }

  @Test
  void theLinkThatShortsIsRinged() {
    GateAnswer answer = check("stage-cue", checked("stage-cue") + "link +a5 -a5\n");
    assertThat(answer.stops().get(0).holes()).containsExactly(hole("+a5"), hole("-a5"));
  }

  @Test
  void aLampStraightAcrossTheSupplyStopsWhileTheRestIsNotPlacedYet() {
    GateAnswer answer =
        check("stage-cue", "B1 +a3 -a3\nD1 a10 a12\nlink +a10 b10\nlink b12 -a12\n");
    assertThat(answer.stops()).extracting(Stop::kind).contains("far-over-limit", "not-whole");
    Stop lamp = answer.stops().get(0);
    assertThat(lamp.ref()).isEqualTo("D1");
    assertThat(lamp.holes()).containsExactly(hole("a10"), hole("a12"));
    assertThat(answer.missing()).contains("R1", "Q1").doesNotContain("D1");
  }

  @Test
  void whatHappensOnlyWhenTheButtonIsPressedStopsToo() {
    String lines = checked("stage-cue") + "link e12 -a20\n";
    assertThat(check("stage-cue", lines).stops()).extracting(Stop::kind).contains("supply-shorted");
  }

  @Test
  void halfABuildIsNotWholeYetAndSaysWhatIsMissing() {
    String lines =
        checked("stage-cue")
            .replaceAll("(?m)^R3.*$", "")
            .replaceAll("(?m)^Q1.*$", "Q1 b=d17 e=d18");
    GateAnswer answer = check("stage-cue", lines);
    assertThat(answer.go()).isFalse();
    assertThat(answer.stops()).extracting(Stop::kind).containsExactly("not-whole");
    assertThat(answer.missing()).containsExactly("R3", "Q1.c");
    assertThat(said(answer)).contains("R3, Q1.c");
  }

  @Test
  void nothingPlacedIsSaidAsSuch() {
    for (String lines : List.of("", "supply 6.00 V")) {
      GateAnswer answer = check("stage-cue", lines);
      assertThat(answer.stops()).extracting(Stop::kind).containsExactly("empty");
      assertThat(said(answer)).contains("Nothing is placed yet");
    }
  }

  @Test
  void aSlipThatHurtsNothingIsNotTold() {
    GateAnswer answer = check("stage-cue", Shipped.lines("stage-cue", "column-off"));
    assertThat(answer.go()).isTrue();
    assertThat(said(answer)).doesNotContain("b18").doesNotContain("wiring");
  }

  @Test
  void readingsAreLeftOutOfAccount() {
    String slug = "stage-cue";
    String without = checked(slug).replaceAll("(?m)^(supply|base|collector|across|lamp).*$", "");
    assertThat(check(slug, without)).isEqualTo(check(slug, checked(slug)));
  }

  private static String said(GateAnswer answer) {
    return Rendered.words("sheet/gate", "answer", Map.of("gate", answer));
  }

  private static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }
}
