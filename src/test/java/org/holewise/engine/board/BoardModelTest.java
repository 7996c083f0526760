package org.holewise.engine.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class BoardModelTest {
  private final BoardModel split = BoardModels.named("830-split").orElseThrow();

  @ParameterizedTest
  @CsvSource({"170, 170, 34", "400, 400, 64", "830, 830, 130", "830-split, 830, 134"})
  void hasTheHolesThatItIsSoldBy(String name, int holes, int strips) {
    // Tie points by which such boards are sold: 63·10 + 4·50, 30·10 + 4·25, 17·10.
    BoardModel model = BoardModels.named(name).orElseThrow();
    assertThat(model.strips()).isEqualTo(strips);
    assertThat(IntStream.range(0, strips).map(strip -> model.holes(strip).size()).sum())
        .isEqualTo(holes);
  }

  @Test
  void knowsTheFourModels() {
    assertThat(BoardModels.names()).containsExactly("170", "400", "830", "830-split");
    assertThat(BoardModels.named("831")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"170", "400", "830", "830-split"})
  void everyHoleIsInItsStripAndInNoOther(String name) {
    BoardModel model = BoardModels.named(name).orElseThrow();
    var seen = new LinkedHashSet<Hole>();
    for (int strip = 0; strip < 9 * model.strips(); strip++) {
      for (Hole hole : model.holes(strip)) {
        assertThat(seen.add(hole)).isTrue();
        assertThat(model.strip(hole)).hasValue(strip);
        assertThat(model.has(hole)).isTrue();
        assertThat(hole.board()).isEqualTo(model.board(strip));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"170", "400", "830", "830-split"})
  void holesStandInGroupsOfFive(String name) {
    BoardModel model = BoardModels.named(name).orElseThrow();
    for (int strip = 0; strip < model.strips(); strip++) {
      assertThat(model.groups(strip)).allSatisfy(group -> assertThat(group).hasSize(5));
      assertThat(model.groups(strip).stream().flatMap(List::stream))
          .containsExactlyElementsOf(model.holes(strip));
    }
  }

  @Test
  void columnsAreNumberedInHalves() {
    assertThat(strip("a1")).hasValue(0);
    assertThat(strip("e1")).hasValue(0);
    assertThat(strip("f1")).hasValue(1);
    assertThat(strip("a2")).hasValue(2);
    assertThat(strip("j63")).hasValue(125);
    assertThat(strip("2:a1")).hasValue(134);
  }

  @Test
  void theGrooveJoinsNothing() {
    assertThat(strip("e7")).isNotEqualTo(strip("f7"));
  }

  @Test
  void anyColumnOfARailStandsForTheRailThere() {
    assertThat(strip("+a1")).isEqualTo(strip("+a31")).isEqualTo(strip("+a8")).isPresent();
    assertThat(strip("+a33")).isEqualTo(strip("+a63")).isPresent();
    assertThat(split.has(Benches.hole("+a8"))).isFalse();
    assertThat(split.has(Benches.hole("+a9"))).isTrue();
  }

  @Test
  void aSplitRailIsTwoStripsWithNothingAtItsGap() {
    assertThat(strip("+a31")).isNotEqualTo(strip("+a33"));
    assertThat(strip("+a32")).isEmpty();
    assertThat(strip("+a")).isEmpty();
  }

  @Test
  void aRailWithoutAGapNeedsNoColumn() {
    BoardModel whole = BoardModels.named("830").orElseThrow();
    assertThat(whole.strip(Benches.hole("-j")))
        .isEqualTo(whole.strip(Benches.hole("-j32")))
        .isPresent();
    assertThat(whole.has(Benches.hole("-j"))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"e64", "+a64", "a999"})
  void thereIsNoStripOffTheBoard(String hole) {
    assertThat(strip(hole)).isEmpty();
  }

  @Test
  void aBoardWithoutRailsHasNone() {
    BoardModel small = BoardModels.named("170").orElseThrow();
    assertThat(small.strip(Benches.hole("+a3"))).isEmpty();
    assertThat(small.rail(3)).isEmpty();
  }

  @Test
  void aSchoolsOwnModelIsReadFromItsFile() {
    BoardModel own =
        BoardModels.read(
            "own",
            """
                columns = 20
                printed = A B C D E F G H I J
                rails = +a -j
                rail.columns = 1-5 7-11
                rail.-j.columns = 2 4 6
                rail.-j.gaps = 3
                """);
    assertThat(own.strips()).isEqualTo(43);
    assertThat(own.printed()).startsWith("A", "B");
    assertThat(own.holes(42)).extracting(Hole::toString).containsExactly("-j4", "-j6");
    assertThat(own.rail(42)).map(Rail::track).contains("-j");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "columns = 0",
        "columns = x",
        "rails = +a",
        "columns = 9\nprinted = a b",
        "columns = 9\nrails = +b\nrail.columns = 1-5",
        "columns = 9\nrails = +a\nrail.columns = 1-12",
        "columns = 9\nrails = +a +a\nrail.columns = 1-5",
        "columns = 9\nrails = +a\nrail.columns = 5 3",
        "columns = 9\nrails = +a\nrail.columns = 1-5\nrail.gaps = 3"
      })
  void aFileThatDescribesNoBoardIsRefused(String text) {
    assertThatThrownBy(() -> BoardModels.read("own", text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("own");
  }

  private OptionalInt strip(String hole) {
    return split.strip(Benches.hole(hole));
  }
}
