package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.board.Hole;
import org.holewise.engine.part.Part;
import org.holewise.school.session.HintStep;
import org.holewise.school.sheet.MarkSheet.Look;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("fast")
class StudentSheetTest {
  private static final Pattern HOLE = Pattern.compile("(?<![\\w.])(?:[a-j]|[+-][aj])\\d+\\b");
  private static final List<MarkedCase> CASES = MarkedCase.all();

  static List<MarkedCase> cases() {
    return CASES;
  }

  private static String shown(MarkedCase marked, StudentSheet sheet) {
    var bench = BenchView.of(marked.exercise(), marked.record().build(), sheet.highlight());
    return sheet
        + " "
        + Rendered.words("sheet/student-mark", "mark", Map.of("sheet", sheet))
        + " "
        + Rendered.words("sheet/board", "figure", Map.of("bench", bench));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void givesNothingAwayBeforeItIsReleased(MarkedCase marked) {
    for (HintStep hint : HintStep.values()) {
      StudentSheet sheet = marked.sheet(hint);
      assertThat(Leaks.in(shown(marked, sheet), marked)).as(hint + " of " + marked).isEmpty();
      assertThat(sheet.result()).isEmpty();
    }
  }

  @Test
  void theCasesAreManyAndOfEveryKind() {
    assertThat(CASES).hasSizeGreaterThan(30);
    assertThat(CASES).anyMatch(c -> c.kept().cautions().size() > 0);
    assertThat(CASES).anyMatch(c -> c.kept().differences().size() > 1);
    assertThat(CASES).anyMatch(c -> c.kept().points().held());
    assertThat(CASES).anyMatch(c -> c.document().contains("\"value\":"));
    assertThat(CASES).anyMatch(c -> c.kept().next().isPresent());
  }

  /** What would be a leak is found in a sheet that has one: a released one has them all. */
  @Test
  void whatIsReleasedIsSeenToHoldWhatWasKeptBack() {
    MarkedCase marked = MarkedCase.typed("sound", "stage-moonlight", lines("checked"));
    StudentSheet sheet = marked.released();
    assertThat(Leaks.in(shown(marked, sheet), marked)).contains("60 of 60");
    assertThat(Leaks.in(sheet.readings().toString(), marked)).isEmpty();
    assertThat(Leaks.in(sheet.result().orElseThrow().readings().toString(), marked))
        .hasSizeGreaterThan(5);
  }

  @Test
  void everyUsualWayToWriteASecretIsFound() {
    MarkedCase marked =
        new MarkedCase(
            "seeded",
            Shipped.exercise("stage-moonlight"),
            Shipped.record("stage-moonlight", "supply 5.01 V\n"),
            """
            {"readings": [{"id": "x", "expected": 2.06183, "low": 0.0119472, "verdict": "within"}],
             "suspects": [{"probability": 0.62, "value": 4700}],
             "wiring": {"score": 0.888889}, "next": {"gain": 1.23457},
             "marks": {"wiring": 56, "readings": 31, "total": 87, "of": 100}}
            """);
    for (String leak :
        List.of(
            "2.06 V",
            "2,06 V",
            "2.06",
            "2.06183",
            "2,06183",
            "2.062 V",
            "2.1 V",
            "2060 mV",
            "2062 mV",
            "2061.83 mV",
            "11.9 mA",
            "11,9 mA",
            "0.0119 A",
            "11.95 mA",
            "4.7 kΩ",
            "4700 Ω",
            "4.7k Ω".replace("k Ω", "kΩ"),
            "4.70 kΩ",
            "0.62",
            "62 %",
            "62%",
            "0.889",
            "89 %",
            "1.23",
            "56 of 60",
            "87 of 100",
            "87 marks",
            "Likely, about 6 in 10")) {
      assertThat(Leaks.in("It says " + leak + ".", marked)).as(leak).isNotEmpty();
    }
    for (String plain :
        List.of(
            "Look between columns 5 and 20, rows a to e.", "supply 5.01 V", "4 of 6 readings")) {
      assertThat(Leaks.in(plain, marked)).as(plain).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theFirstStepSaysOnlyWhatFits(MarkedCase marked) {
    StudentSheet sheet = marked.sheet(HintStep.VERDICTS);
    assertThat(sheet.look()).isEmpty();
    assertThat(sheet.highlight()).isEqualTo(Highlight.NONE);
    assertThat(sheet.acts()).isEmpty();
    assertThat(sheet.next()).isEmpty();
    assertThat(sheet.readings()).hasSameSizeAs(marked.exercise().readings());
    assertThat(words(sheet)).doesNotContainPattern(HOLE);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theAreaNamesNoPartAndHoldsThePlace(MarkedCase marked) {
    StudentSheet sheet = marked.sheet(HintStep.AREA);
    StudentSheet place = marked.sheet(HintStep.PLACE);
    assertThat(sheet.look().isPresent()).isEqualTo(!sheet.sound());
    String said = sheet.look().map(Look::text).orElse("");
    assertThat(said).doesNotContainPattern(HOLE).doesNotContainIgnoringCase("link ");
    for (Part part : marked.exercise().parts()) {
      assertThat(said).doesNotContainPattern("\\b" + part.ref() + "\\b");
    }
    assertThat(sheet.highlight().ringed()).isEmpty();
    assertThat(sheet.highlight().dashed()).isEmpty();
    assertThat(sheet.acts()).isEmpty();
    assertThat(sheet.next()).isEmpty();
    if (!sheet.highlight().patches().isEmpty()) {
      assertThat(place.highlight().ringed()).allMatch(hole -> within(sheet.highlight(), hole));
    }
  }

  private static boolean within(Highlight area, Hole hole) {
    return area.patches().stream()
        .anyMatch(
            patch ->
                patch.board() == hole.board()
                    && patch.tracks().contains(hole.track())
                    && (hole.column() == 0
                        || patch.first() <= hole.column() && hole.column() <= patch.last()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void thePartIsNamedAndNotTheLead(MarkedCase marked) {
    StudentSheet sheet = marked.sheet(HintStep.PART);
    StudentSheet place = marked.sheet(HintStep.PLACE);
    String said = sheet.look().map(Look::text).orElse("");
    assertThat(said).doesNotContainPattern(HOLE).doesNotContain("lead");
    assertThat(sheet.highlight().dashed()).isEmpty();
    assertThat(sheet.acts()).isEmpty();
    List<Hole> exact = place.highlight().ringed();
    if (!sheet.highlight().ringed().equals(exact)) {
      String next = sheet.next().map(MarkSheet.Next::text).orElse("");
      exact.forEach(
          hole ->
              assertThat(next)
                  .doesNotContainPattern("\\b" + Pattern.quote(hole.toString()) + "\\b"));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyStepSaysMore(MarkedCase marked) {
    if (marked.sheet(HintStep.VERDICTS).sound()) {
      return;
    }
    var said =
        List.of(HintStep.AREA, HintStep.PART, HintStep.PLACE).stream()
            .map(hint -> marked.sheet(hint).look().orElseThrow().text())
            .toList();
    assertThat(said).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void cautionsAreSaidInFullAtEveryStep(MarkedCase marked) {
    for (HintStep hint : HintStep.values()) {
      assertThat(marked.sheet(hint).cautions()).isEqualTo(Warning.of(marked.kept().cautions()));
    }
  }

  @Test
  void theLastStepNamesTheHoleAndWhatToDo() {
    StudentSheet sheet =
        MarkedCase.typed("slip", "stage-cue", Shipped.lines("stage-cue", "column-off"))
            .sheet(HintStep.PLACE);
    assertThat(sheet.look().orElseThrow().text()).contains("R1", "b18", "a column off");
    assertThat(sheet.highlight().ringed()).containsExactly(Hole.read("b18").orElseThrow());
    assertThat(sheet.highlight().dashed()).isNotEmpty();
  }

  @Test
  void aPartOfAnotherValueIsNamedWithoutIt() {
    MarkedCase marked =
        CASES.stream().filter(c -> c.name().equals("dimmer-exchanged")).findFirst().orElseThrow();
    assertThat(marked.kept().suspects().get(0).text()).contains("4.7 kΩ");
    assertThat(marked.sheet(HintStep.PLACE).look().orElseThrow().text())
        .startsWith("Look at R1.")
        .contains("another value")
        .doesNotContain("4.7");
  }

  @Test
  void theReadingToTakeIsWrittenAsALineWithoutAValue() {
    MarkedCase marked = MarkedCase.typed("loose", "stage-moonlight", lines("loose-lead"));
    var next = marked.sheet(HintStep.PLACE).next().orElseThrow();
    assertThat(next.line()).doesNotStartWith("extra").matches("(volts|amps|ohms|joined|seen) .*");
    assertThat(next.text()).isNotBlank();
  }

  @Test
  void namesAConditionOnlyWhereItIsNotTheUsualOne() {
    var asked =
        CASES.stream().map(c -> c.sheet(HintStep.PLACE)).flatMap(s -> s.next().stream()).toList();
    assertThat(asked).anyMatch(next -> next.line().contains(" when "));
    assertThat(asked).anyMatch(next -> !next.line().contains(" when "));
    assertThat(asked)
        .allMatch(next -> next.line().contains(" when ") == next.text().startsWith("Set up"));
  }

  private static String words(StudentSheet sheet) {
    return Rendered.words("sheet/student-mark", "mark", Map.of("sheet", sheet));
  }

  private static String lines(String start) {
    return Shipped.lines("stage-moonlight", start);
  }
}
