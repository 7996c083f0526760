package org.holewise.engine.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PlainKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class BuildCheckTest {
  private static final List<Part> LAMP =
      List.of(
          PlainKind.BATTERY.part("B1"), PlainKind.RESISTOR.part("R1"), PlainKind.LED.part("D1"));
  private static final String B1 = "B1 +=+j3 -=-a3";
  private static final String R1 = "R1 1=f8 2=f12";
  private static final String D1 = "D1 a=g12 k=g14";

  @Test
  void aCleanBuildHasNone() {
    assertThat(found(B1, R1, D1, "link +j9 j8", "link f14 e14", "link a14 -a15")).isEmpty();
  }

  @Test
  void aHoleOffTheBoardIsFound() {
    assertThat(found(B1, "R1 1=f64 2=f12", D1, "link a1 a99"))
        .containsExactly(
            "/build/placed/1/holes/1 off-board [R1.1, f64, 830-split]",
            "/build/links/0/1 off-board [link 1, a99, 830-split]");
  }

  @Test
  void aRailsGapAndARailWithoutItsColumnAreFound() {
    assertThat(found("B1 +=+j32 -=-a", R1, D1))
        .containsExactly(
            "/build/placed/0/holes/+ rail-gap [B1.+, +j32]",
            "/build/placed/0/holes/- rail-side [B1.-, -a]");
  }

  @Test
  void aRailThatTheBoardLacksIsOffIt() {
    assertThat(kinds(BuildCheck.findings(Benches.build("170", "R1 1=+a 2=+a3"), parts("R1"))))
        .containsExactly("off-board", "off-board");
  }

  @Test
  void twoLeadsInOneHoleAreBothNamed() {
    assertThat(found(B1, R1, "D1 a=f12 k=g14", "link a14 g14"))
        .containsExactly(
            "/build/placed/2/holes/a hole-taken [D1.a, f12, R1.2]",
            "/build/links/0/1 hole-taken [link 1, g14, D1.k]");
  }

  @Test
  void aRailPlaceBetweenItsHolesMayBeNamedTwice() {
    assertThat(found("B1 +=+j8 -=-a2", R1, D1, "link +j8 j8")).isEmpty();
  }

  @Test
  void bothLeadsInOneStripAreFound() {
    assertThat(found(B1, "R1 1=f8 2=j8", D1))
        .containsExactly("/build/placed/1 same-strip [R1, 1, 2, f8, j8]");
  }

  @Test
  void twinsMayShareAStrip() {
    var parts = List.of(PlainKind.BUTTON.part("S1"));
    assertThat(BuildCheck.findings(Benches.build("830", "S1 1=e5 1a=d5 2=e7 2a=f7"), parts))
        .isEmpty();
  }

  @Test
  void aPartPlacedTwiceUnknownOrMissingIsFound() {
    assertThat(found(B1, R1, R1, "R9 1=a1 2=a2"))
        .containsExactly(
            "/build/placed/2 part-twice [R1]",
            "/build/placed/3/ref ref-unknown [R9]",
            "/build/placed part-missing [D1]");
  }

  @Test
  void aPinUnknownOrWithoutAHoleIsFound() {
    assertThat(found(B1, R1, "D1 a=g12 -/~=g14"))
        .containsExactly(
            "/build/placed/2/holes/-~1~0 pin-unknown [D1, -/~]",
            "/build/placed/2/holes lead-missing [D1, k]");
  }

  @Test
  void aTwinStandsForAPinWithoutAHole() {
    var parts = List.of(PlainKind.BUTTON.part("S1"));
    assertThat(BuildCheck.findings(Benches.build("830", "S1 1=e5 2a=f7"), parts)).isEmpty();
  }

  @Test
  void aFirstPinIsForChips() {
    var placed = new Placed("R1", Map.of(), Optional.of(Benches.hole("e20")), Optional.empty());
    var build = new Build(BoardModels.named("830").orElseThrow(), List.of(placed), List.of());
    assertThat(kinds(BuildCheck.findings(build, parts("R1"))))
        .containsExactly("pin1-alone", "lead-missing", "lead-missing");
  }

  @Test
  void aLinkFromAStripToItselfIsFound() {
    assertThat(found(B1, R1, D1, "link a20 e20"))
        .containsExactly("/build/links/0 link-in-strip [a20, e20]");
  }

  @Test
  void aLinkBetweenPlusAndMinusIsFound() {
    assertThat(found(B1, R1, D1, "link +a3 -j5", "link +a9 +j9"))
        .containsExactly("/build/links/0 rails-joined [+a3, -j5]");
  }

  private static List<String> found(String... lines) {
    return BuildCheck.findings(Benches.build("830-split", lines), LAMP).stream()
        .map(f -> f.at() + " " + f.kind() + " " + f.parts())
        .toList();
  }

  private static List<String> kinds(List<Finding> findings) {
    return findings.stream().map(Finding::kind).toList();
  }

  private static List<Part> parts(String ref) {
    return List.of(PlainKind.RESISTOR.part(ref));
  }
}
