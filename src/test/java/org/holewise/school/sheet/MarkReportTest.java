package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Mark;
import org.holewise.school.sheet.MarkSheet.Fit;
import org.holewise.school.trial.StartingPoint;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class MarkReportTest {
  private static final String MOON = "stage-moonlight";

  private static String moon(String start) {
    return Shipped.lines(MOON, start);
  }

  private static MarkSheet sheet(Mark mark, String lines) {
    return MarkSheet.of(
        Shipped.exercise(MOON),
        Shipped.record(MOON, lines),
        KeptMark.read(Shipped.document(MOON, lines, mark)));
  }

  @Test
  void aSoundBuildHasNothingToLookAt() {
    MarkSheet sheet = Shipped.sheet(MOON, moon("checked"));
    assertThat(sheet.look()).isEmpty();
    assertThat(sheet.highlight().ringed()).isEmpty();
    assertThat(sheet.fits()).extracting(Fit::state).containsExactly("fits", "fits");
    assertThat(sheet.doubt()).isFalse();
    assertThat(sheet.readingsOf()).isEqualTo(40);
  }

  @Test
  void aDifferenceOfTheWiringComesBeforeSuspects() {
    String lines = Shipped.lines("stage-cue", "column-off");
    MarkSheet sheet = Shipped.sheet("stage-cue", lines);
    assertThat(sheet.look().orElseThrow().text()).contains("b18").contains("a column off");
    assertThat(sheet.highlight().ringed()).containsExactly(hole("b18"));
    assertThat(sheet.fits()).extracting(Fit::state).containsExactly("look", "fits");
    assertThat(sheet.suspects()).isNotEmpty();
  }

  @Test
  void aSuspectedPartIsRingedAtItsLeads() {
    MarkSheet sheet = Shipped.sheet(MOON, moon("turned-lamp"));
    assertThat(sheet.look().orElseThrow().text()).startsWith("Look at D1.");
    assertThat(sheet.highlight().ringed()).containsExactly(hole("c15"), hole("c17"));
    assertThat(sheet.fits()).extracting(Fit::state).containsExactly("fits", "look");
  }

  @Test
  void theLineForTheNextReadingReadsAsThatReading() {
    for (String slug : Shipped.SLUGS) {
      for (StartingPoint start : Shipped.starts(slug)) {
        Mark mark = Shipped.mark(slug, start.lines());
        Shipped.sheet(slug, start.lines())
            .next()
            .ifPresent(
                next -> {
                  var asked = mark.diagnosis().next().orElseThrow();
                  var typed = BuildLines.read(next.line() + " 1.23 V", Shipped.exercise(slug));
                  assertThat(typed.sound()).isTrue();
                  assertThat(typed.record().extra())
                      .extracting(Extra::measure, Extra::when)
                      .containsExactly(
                          org.assertj.core.groups.Tuple.tuple(asked.measure(), asked.when()));
                });
      }
    }
    assertThat(Shipped.sheet(MOON, moon("loose-lead")).next()).isPresent();
  }

  @Test
  void readingsThatFitOtherPlacesAsWellLeaveADoubt() {
    assertThat(Shipped.sheet(MOON, moon("loose-lead")).doubt()).isTrue();
  }

  @Test
  void whereTheReadingsSpeakForTheSchematicTheRecordIsDoubted() {
    MarkSheet sheet = Shipped.sheet(MOON, moon("checked").replace("D1 c15 c17", "D1 c14 c17"));
    assertThat(sheet.points().held()).isTrue();
    assertThat(sheet.fits().get(0).said().key()).isEqualTo("sheet.fits.wiring.doubtful");
    assertThat(sheet.fits().get(1).said().key()).isEqualTo("sheet.fits.readings.schematic");
    assertThat(sheet.look()).isPresent();
  }

  @Test
  void aReadingThatCannotBeReadIsAskedForAgain() {
    MarkSheet sheet = Shipped.sheet(MOON, moon("checked").replace("5.01 V", "5,010"));
    assertThat(sheet.look().orElseThrow().text()).startsWith("Supply under load: ");
    Readout supply = sheet.readings().get(0);
    assertThat(supply.state()).isEqualTo("look");
    assertThat(supply.measured()).isEqualTo("5,010");
    assertThat(supply.advice()).isNotEmpty();
  }

  @Test
  void readingsNotTakenYetWait() {
    String lines = moon("checked").replaceAll("(?m)^(moon|current).*$", "");
    MarkSheet sheet = Shipped.sheet(MOON, lines);
    assertThat(sheet.fits().get(1).state()).isEqualTo("waits");
    assertThat(sheet.fits().get(1).said().parts()).containsExactly("4", "6");
    assertThat(sheet.readings()).extracting(Readout::state).contains("waits");
  }

  @Test
  void theReadingsAloneAreJudgedWithoutALayout() {
    MarkSheet sheet = Shipped.sheet(MOON, "supply 5.01 V\nacross-r1 1.86 V");
    assertThat(sheet.fits().get(0).said().key()).isEqualTo("sheet.fits.no-layout");
    assertThat(sheet.highlight().ringed()).isEmpty();
  }

  @Test
  void aCautionIsSaidOnceAndWhatSpoilsThingsIsAStop() {
    String lines = moon("checked");
    Mark mark = Shipped.mark(MOON, lines);
    var limit = new Caution("far-over-limit", "D1", List.of("D1", "80.0 mA"));
    var again = new Caution("far-over-limit", "D1", List.of("D1", "81.0 mA"));
    var warm = new Caution("over-power", "R1", List.of("R1", "300 mW"));
    var cautioned =
        new Mark(
            mark.engine(),
            mark.priors(),
            mark.findings(),
            mark.wiring(),
            mark.readings(),
            mark.diagnosis(),
            List.of(limit, again, warm),
            mark.marks());
    List<Warning> said = sheet(cautioned, lines).cautions();
    assertThat(said).extracting(Warning::stop).containsExactly(true, false);
    assertThat(said.get(0).text()).contains("Power off now").contains("D1");
  }

  @Test
  void whatWasOddAboutTheRecordComesFirstAmongTheFindings() {
    String lines = moon("checked") + "link a20 b20\n";
    MarkSheet sheet = Shipped.sheet(MOON, "board 400\n" + lines);
    assertThat(sheet.findings()).hasSizeGreaterThan(1);
    assertThat(sheet.findings().get(0)).contains("model 400");
  }

  @ParameterizedTest
  @CsvSource({
    "0.999, sheet.likely, sheet.share.nearly-all",
    "0.62, sheet.likely, sheet.share.of 6 10",
    "0.949, sheet.likely, sheet.share.of 9 10",
    "0.3, sheet.possible, sheet.share.of 3 10",
    "0.04, sheet.unlikely, sheet.share.of 4 100",
    "0.002, sheet.unlikely, sheet.share.few"
  })
  void probabilitiesAreSaidAsPeopleSayThem(double probability, String word, String share) {
    Likelihood said = Likelihood.of(probability);
    assertThat(said.word()).isEqualTo(word);
    assertThat(said.share().key() + " " + String.join(" ", said.share().parts()))
        .isEqualToIgnoringWhitespace(share);
  }

  @Test
  void numbersThatFollowEachOtherAreSaidAsARange() {
    assertThat(MarkReport.numbers(List.of(1, 3, 4, 5, 8, 9))).isEqualTo("1, 3–5, 8, 9");
    assertThat(MarkReport.numbers(List.of())).isEmpty();
  }

  private static Hole hole(String text) {
    return Optional.of(text).flatMap(Hole::read).orElseThrow();
  }
}
