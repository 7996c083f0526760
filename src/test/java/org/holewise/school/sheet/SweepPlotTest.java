package org.holewise.school.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class SweepPlotTest {
  private static final String VOICES = "stage-voices";

  private static SweepPlot plot(String lines) {
    List<SweepPlot> plots = Shipped.sheet(VOICES, lines).sweeps();
    assertThat(plots).hasSize(1);
    return plots.get(0);
  }

  private static List<double[]> points(String line) {
    return Arrays.stream(line.split(" ", -1))
        .map(pair -> Arrays.stream(pair.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  @Test
  void readingsOfASoundBuildLieOnTheCurve() {
    SweepPlot plot = plot(Shipped.lines(VOICES, "checked"));
    List<double[]> curve = points(plot.wanted());
    assertThat(plot.built()).isEmpty();
    assertThat(plot.measured())
        .extracting(SweepPlot.Taken::label)
        .containsExactly("Gain at 300 Hz", "Gain at 9 kHz", "The corner");
    for (SweepPlot.Taken taken : plot.measured()) {
      double[] nearest =
          curve.stream()
              .min(Comparator.comparingDouble(p -> Math.hypot(p[0] - taken.x(), p[1] - taken.y())))
              .orElseThrow();
      assertThat(Math.hypot(nearest[0] - taken.x(), nearest[1] - taken.y())).isLessThan(6);
    }
  }

  @Test
  void everythingIsInsideTheAxes() {
    SweepPlot plot = plot(Shipped.lines(VOICES, "checked"));
    assertThat(points(plot.wanted()))
        .allSatisfy(
            point -> {
              assertThat(point[0]).isBetween(plot.left(), plot.right());
              assertThat(point[1]).isBetween(plot.top(), plot.bottom());
            });
    assertThat(plot.hertz()).first().satisfies(t -> assertThat(t.at()).isEqualTo(plot.left()));
    assertThat(plot.hertz()).last().satisfies(t -> assertThat(t.at()).isEqualTo(plot.right()));
    assertThat(plot.decibels()).extracting(SweepPlot.Tick::text).contains("0", "−20", "−40");
    assertThat(plot.rows()).hasSameSizeAs(plot.hertz());
  }

  @Test
  void aPartThatIsMarkedOtherwiseHasACurveOfItsOwn() {
    String lines = Shipped.lines(VOICES, "checked");
    String other = lines.replaceFirst("(R1 \\S+ \\S+) marked 10k", "$1 marked 1k");
    assertThat(other).isNotEqualTo(lines);
    SweepPlot plot = plot(other);
    List<double[]> wanted = points(plot.wanted());
    List<double[]> built = points(plot.built());
    int last = wanted.size() - 1;
    assertThat(built.get(0)[1]).isEqualTo(wanted.get(0)[1], within(1.0));
    assertThat(built.get(last)[1]).isLessThan(wanted.get(last)[1]);
    assertThat(plot.rows()).allSatisfy(row -> assertThat(row.built()).endsWith(" dB"));
  }

  @Test
  void aBuildThatPassesNothingHasNumbersAndNoCurve() {
    String lines = Shipped.lines(VOICES, "checked");
    String apart = lines.replaceFirst("R1 (\\S+) \\S+ ", "R1 $1 j60 ");
    assertThat(apart).isNotEqualTo(lines);
    SweepPlot plot = plot(apart);
    assertThat(plot.wanted()).isNotEmpty();
    assertThat(plot.built()).isEmpty();
    assertThat(plot.otherwise()).isTrue();
  }

  @Test
  void anExerciseThatComparesNothingHasNone() {
    assertThat(
            Shipped.sheet("stage-moonlight", Shipped.lines("stage-moonlight", "checked")).sweeps())
        .isEmpty();
  }

  @Test
  void thePageSaysTheSameInNumbers() {
    SweepPlot plot = plot(Shipped.lines(VOICES, "checked"));
    String words = Rendered.words("sheet/sweep", "sweep", Map.of("plot", plot));
    assertThat(words)
        .contains("1 kHz")
        .contains("dB")
        .contains("schematic")
        .doesNotContain("as built");
    assertThat(words).contains("U1.1 – P1.0 over G1.+ – G1.-");
  }
}
