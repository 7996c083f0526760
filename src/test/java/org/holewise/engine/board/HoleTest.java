package org.holewise.engine.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class HoleTest {

  @ParameterizedTest
  @CsvSource({
    "e12, e12", "12e, e12", "E12, e12", "e-12, e12", "e\u221212, e12", "' e12 ', e12",
    "+j12, +j12", "-a2, -a2", "\u2212a2, -a2", "+J12, +j12", "+j, +j", "-a, -a",
    "2:e12, 2:e12", "2:12E, 2:e12", "9:-j3, 9:-j3", "1:e12, e12", "a1, a1", "j999, j999"
  })
  void isReadInEveryWayItIsWritten(String written, String plain) {
    assertThat(Hole.read(written)).map(Hole::toString).contains(plain);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "z99",
        "k5",
        "e0",
        "e00",
        "e",
        "12",
        "e1000",
        "e12e",
        "e 12",
        "+b3",
        "+a0",
        "*a3",
        "0:e12",
        "10:e12",
        "e12.0",
        "e+12",
        "e--12",
        "-e12",
        "2:",
        "e12\u0000",
        "\u0665e",
        "eeeeeeeeeeeeeeee1"
      })
  void isNotReadWhereItIsNone(String written) {
    assertThat(Hole.read(written)).isEmpty();
  }

  @Test
  void printsAsItIsRead() {
    for (int board : List.of(1, 2, 9)) {
      for (String track : List.of("a", "e", "f", "j", "+a", "-a", "+j", "-j")) {
        for (int column : List.of(1, 31, 63)) {
          Hole hole = new Hole(board, track, column);
          assertThat(Hole.read(hole.toString())).contains(hole);
        }
      }
    }
  }

  @Test
  void isOrderedByBoardThenColumnThenTrack() {
    assertThat(List.of("2:a1", "a2", "+a1", "a1", "j1").stream().map(Benches::hole).sorted())
        .extracting(Hole::toString)
        .containsExactly("+a1", "a1", "j1", "a2", "2:a1");
  }
}
