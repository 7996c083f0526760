package org.holewise.school.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.wiring.Difference;
import org.holewise.engine.wiring.Repair;
import org.holewise.school.sheet.Shipped;
import org.holewise.school.sheet.TypedBuild;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

@Tag("fast")
class StartingPointsTest {
  static final Iterable<String> SLUGS = Shipped.SLUGS;

  @ParameterizedTest
  @FieldSource("SLUGS")
  void everyOneCanBeReadAsItStands(String slug) {
    assertThat(Shipped.starts(slug)).hasSizeGreaterThanOrEqualTo(4);
    for (StartingPoint start : Shipped.starts(slug)) {
      assertThat(TypedBuild.read(start.lines(), Shipped.exercise(slug)).notes())
          .as(start.name())
          .isEmpty();
    }
  }

  @ParameterizedTest
  @FieldSource("SLUGS")
  void theEmptyOneNamesWhatIsToBeTyped(String slug) {
    var exercise = Shipped.exercise(slug);
    var names = Shipped.lines(slug, StartingPoints.EMPTY).lines().map(String::strip).toList();
    assertThat(names).hasSize(exercise.parts().size() + 1 + exercise.readings().size());
    assertThat(names).contains("link", "R1", exercise.readings().get(0).id());
  }

  @ParameterizedTest
  @FieldSource("SLUGS")
  void theCheckedOneIsTheLibrarysCheckedBuildAndEarnsEveryMark(String slug) {
    String lines = Shipped.lines(slug, StartingPoints.CHECKED);
    assertThat(Shipped.record(slug, lines)).isEqualTo(Shipped.entry(slug).checked());
    Mark mark = Shipped.mark(slug, lines);
    assertThat(mark.marks().total()).isEqualTo(mark.marks().of());
    assertThat(first(mark).likeliest().kind()).isEqualTo("none");
  }

  @ParameterizedTest
  @CsvSource({
    "stage-moonlight, turned-lamp, reversed",
    "stage-dimmer, wrong-part, wrong-value",
    "stage-cue, bare-wires, touching"
  })
  void aSlipThatTheRecordHidesIsTheFirstSuspect(String slug, String start, String kind) {
    Mark mark = Shipped.mark(slug, Shipped.lines(slug, start));
    assertThat(mark.wiring().matches()).isTrue();
    assertThat(first(mark).likeliest().kind()).isEqualTo(kind);
  }

  @Test
  void aLeadThatDoesNotTouchLeavesSeveralSuspectsAndAReadingToAskFor() {
    Mark mark = Shipped.mark("stage-moonlight", Shipped.lines("stage-moonlight", "loose-lead"));
    assertThat(mark.diagnosis().suspects())
        .extracting(suspect -> suspect.likeliest().kind())
        .contains("open-contact");
    assertThat(mark.diagnosis().next()).isPresent();
  }

  @Test
  void aLeadAColumnOffIsTheDifference() {
    Mark mark = Shipped.mark("stage-cue", Shipped.lines("stage-cue", "column-off"));
    assertThat(repairs(mark.wiring().differences().get(0)))
        .anyMatch(
            repair ->
                repair instanceof Repair.MoveLead move
                    && move.pin().toString().equals("R1.2")
                    && move.slip() == Repair.Slip.COLUMN_OFF);
    assertThat(mark.marks().readings()).isEqualTo(40);
  }

  @Test
  void aRailWithoutItsBridgeIsTheDifference() {
    Mark mark = Shipped.mark("stage-dimmer", Shipped.lines("stage-dimmer", "no-bridge"));
    assertThat(repairs(mark.wiring().differences().get(0)))
        .anyMatch(repair -> repair instanceof Repair.AddLink add && add.acrossGap());
  }

  private static Suspect first(Mark mark) {
    return mark.diagnosis().suspects().get(0);
  }

  private static List<Repair> repairs(Difference difference) {
    var repairs = new ArrayList<>(difference.or());
    repairs.add(difference.repair());
    return repairs;
  }
}
