package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.check.Check;
import org.holewise.drawing.check.ReadBack;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.drawing.sheet.SymbolStyle;
import org.junit.jupiter.api.Test;

/**
 * Whatever is asked for is drawn cleanly or said to be undrawable, never drawn wrong. As many as
 * {@code -Dholewise.netlists=5000} asks for.
 */
class RandomDrawingsTest {
  private static final int COUNT = Integer.getInteger("holewise.netlists", 100);

  /** Of all; more would mean that the drawer gives up where a person would not. */
  private static final double MOST_UNDRAWABLE = 0.02;

  @Test
  void netlistsAreDrawnCleanlyOrRefused() {
    var wrong = new ArrayList<Long>();
    var refused = new ArrayList<Long>();
    for (long seed = 0; seed < COUNT; seed++) {
      var schematic = RandomNetlists.of(seed);
      var style = seed % 2 == 0 ? SymbolStyle.IEC : SymbolStyle.ANSI;
      if (!(SchematicDrawing.of(schematic, style) instanceof Drawn.Done done)) {
        refused.add(seed);
      } else if (!Check.faults(schematic, done.drawing()).isEmpty()
          || ReadBack.nets(done.drawing()).isEmpty() && joined(seed)) {
        wrong.add(seed);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(refused).hasSizeLessThanOrEqualTo((int) (MOST_UNDRAWABLE * COUNT));
  }

  private static boolean joined(long seed) {
    return RandomNetlists.of(seed).nets().stream().anyMatch(net -> net.pins().size() > 1);
  }

  @Test
  void netlistsDifferAndAreWhatTheySeem() {
    assertThat(RandomNetlists.of(1)).isEqualTo(RandomNetlists.of(1));
    assertThat(List.of(1L, 2L, 3L))
        .extracting(seed -> RandomNetlists.of(seed).nets().toString())
        .doesNotHaveDuplicates();
  }
}
