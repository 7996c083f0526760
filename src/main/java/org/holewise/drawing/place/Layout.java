package org.holewise.drawing.place;

import java.util.List;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;

/**
 * Pieces in their places, and how nets that feed and return are to be drawn.
 *
 * @param lines whether the outer rails are lines, with all that is on them led there
 * @param top height of the upper line
 * @param bottom height of the lower line
 */
public record Layout(
    List<Piece> pieces, Nets nets, Rails rails, boolean lines, int top, int bottom) {
  public Layout {
    pieces = List.copyOf(pieces);
  }

  /** 1 where a net is the line on top, −1 where it is the one at the bottom, else 0. */
  public int line(int net) {
    return !lines || net == Nets.NONE ? 0 : net == rails.top() ? 1 : net == rails.bottom() ? -1 : 0;
  }

  /** Whether a net is drawn as symbols at its pins. */
  public boolean marked(int net) {
    return rails.way(net) != 0 && line(net) == 0;
  }

  /** What a supply's symbol says: its voltage, or the net's name where two have the same. */
  public String label(int net) {
    String volts = volts(net);
    for (int other = 0; other < nets.size(); other++) {
      if (other != net && rails.way(other) != 0 && volts(other).equals(volts)) {
        return nets.name(net);
      }
    }
    return volts;
  }

  private String volts(int net) {
    double volts = rails.volts(net);
    return (volts > 0 ? "+" : "") + Display.value(volts, Unit.VOLT);
  }
}
