package org.holewise.drawing.place;

import java.util.List;
import java.util.Map;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.symbol.Symbols;

/** Places a schematic's symbols: the same choices give the same places. */
public final class Placer {
  /** From what stands outermost to a line (px). */
  private static final int RAIL = 20;

  private Placer() {}

  /**
   * What may be tried another way.
   *
   * @param lines the outer rails as lines
   * @param improved the order from left to right improved beyond the signal's way
   * @param gap between neighbours (px)
   */
  public record Choice(boolean lines, boolean improved, int gap) {}

  public static Layout place(Schematic schematic, Symbols symbols, Choice choice) {
    var nets = new Nets(schematic);
    var rails = new Rails(schematic, nets);
    List<Piece> pieces = Pieces.of(schematic, symbols, nets, rails);
    List<Element> elements = new Plan(pieces, nets, rails).elements();
    var flow = new Flow(pieces, elements, nets, rails);
    flow.faceChangeovers();
    Map<Element, Piece> hats = flow.hats();
    var heights = new Heights(pieces, elements, nets, rails, flow);
    var items = new Items(elements, rails, flow, heights, hats).items();
    var order = new Order(items, nets.size());
    new Spacing(choice.improved() ? order.improved() : order.byFlow(), choice.gap());
    if (schematic.seats().isEmpty()) {
      return new Layout(pieces, nets, rails, choice.lines(), heights.top(), heights.bottom());
    }
    Seating.seat(pieces, schematic.seats());
    Area all =
        pieces.stream()
            .map(piece -> Heights.reach(piece).moved(piece.x, piece.y))
            .reduce(Area::with)
            .orElseThrow();
    return new Layout(
        pieces, nets, rails, choice.lines(), (int) all.y() - RAIL, (int) all.bottom() + RAIL);
  }

  /** Whether something is fed from below ground. */
  public static boolean twoSided(Schematic schematic) {
    var rails = new Rails(schematic, new Nets(schematic));
    return rails.bottom() != rails.ground();
  }
}
