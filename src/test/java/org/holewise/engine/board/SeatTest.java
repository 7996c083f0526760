package org.holewise.engine.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Where the pins of a chip come to lie, and what is odd about that. */
@Tag("fast")
class SeatTest {
  private static final Part GATES =
      new Part("U1", Registry.kind("7400").orElseThrow(), Fields.NONE);
  private static final Part DISPLAY =
      new Part("U1", Registry.kind("seven-segment").orElseThrow(), Fields.NONE);

  private static Placed placed(Part part, String pin1) {
    return new Placed("U1", Map.of(), Optional.of(Benches.hole(pin1)), Optional.empty())
        .seated(part);
  }

  private static List<String> found(Part part, Placed placed) {
    var build = new Build(BoardModels.named("830").orElseThrow(), List.of(placed), List.of());
    return BuildCheck.findings(build, List.of(part)).stream()
        .map(finding -> finding.at() + " " + finding.kind())
        .toList();
  }

  @Test
  void withItsNotchTowardsColumnOnePinsRunUpRowEAndBackAlongRowF() {
    Placed chip = placed(GATES, "e20");
    assertThat(chip.hole("1")).hasToString("Optional[e20]");
    assertThat(chip.hole("7")).hasToString("Optional[e26]");
    assertThat(chip.hole("8")).hasToString("Optional[f26]");
    assertThat(chip.hole("14")).hasToString("Optional[f20]");
    assertThat(found(GATES, chip)).isEmpty();
  }

  @Test
  void turnedRoundPinsRunDownRowFAndBackAlongRowE() {
    Placed chip = placed(GATES, "f26");
    assertThat(chip.hole("7")).hasToString("Optional[f20]");
    assertThat(chip.hole("8")).hasToString("Optional[e20]");
    assertThat(chip.hole("14")).hasToString("Optional[e26]");
    assertThat(found(GATES, chip)).isEmpty();
  }

  @Test
  void turningRoundTwiceIsTheSameSeat() {
    Seat seat = Seat.of(Benches.hole("e20"), new Footprint.Dip(14));
    assertThat(seat.turnedRound().first()).hasToString("f26");
    assertThat(seat.turnedRound().turnedRound()).isEqualTo(seat);
    assertThat(seat.shifted(2).first()).hasToString("e22");
  }

  @Test
  void aWidePackageReachesSixRowsFar() {
    Placed digit = placed(DISPLAY, "d10");
    assertThat(digit.hole("5")).hasToString("Optional[d14]");
    assertThat(digit.hole("6")).hasToString("Optional[h14]");
    assertThat(digit.hole("10")).hasToString("Optional[h10]");
    assertThat(found(DISPLAY, digit)).isEmpty();
  }

  @Test
  void itsHolesMayBeGivenOneByOne() {
    Map<String, Hole> holes = placed(GATES, "e20").holes();
    var chip = new Placed("U1", holes, Optional.empty(), Optional.empty());
    assertThat(chip.seat(GATES)).isPresent();
    assertThat(found(GATES, chip)).isEmpty();
    var bent = new LinkedHashMap<>(holes);
    bent.put("3", Benches.hole("e40"));
    assertThat(found(GATES, new Placed("U1", bent, Optional.empty(), Optional.empty())))
        .containsExactly("/build/placed/0/holes chip-spread");
  }

  @Test
  void aChipOnOneSideOfTheGrooveIsFound() {
    assertThat(found(GATES, placed(GATES, "a20")))
        .containsExactly("/build/placed/0/pin1 chip-in-half");
    assertThat(found(GATES, placed(GATES, "j26")))
        .containsExactly("/build/placed/0/pin1 chip-in-half");
  }

  @Test
  void aChipOverTheGrooveOrOffTheBoardOrInARailIsFound() {
    assertThat(found(GATES, placed(GATES, "c20")))
        .containsExactly("/build/placed/0/pin1 chip-over-groove");
    assertThat(found(GATES, placed(GATES, "e60")))
        .containsExactly("/build/placed/0/pin1 chip-off-board");
    assertThat(found(GATES, placed(GATES, "f3")))
        .containsExactly("/build/placed/0/pin1 chip-off-board");
    assertThat(found(GATES, placed(GATES, "+a3")))
        .containsExactly("/build/placed/0/pin1 chip-in-rail");
  }
}
