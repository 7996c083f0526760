package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.TextSize;
import org.holewise.drawing.symbol.Form;
import org.holewise.drawing.symbol.Symbols;
import org.holewise.drawing.symbol.Symbols.Side;
import org.holewise.engine.part.Leg;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;

/** Makes the symbols of a schematic, the pins of its chips on the sides where they serve best. */
final class Pieces {
  private static final int PITCH = 20;
  private static final int ROW_PITCH = 60;

  private final Schematic schematic;
  private final Symbols symbols;
  private final Nets nets;
  private final Rails rails;
  private final List<Piece> pieces = new ArrayList<>();

  private Pieces(Schematic schematic, Symbols symbols, Nets nets, Rails rails) {
    this.schematic = schematic;
    this.symbols = symbols;
    this.nets = nets;
    this.rails = rails;
  }

  static List<Piece> of(Schematic schematic, Symbols symbols, Nets nets, Rails rails) {
    var made = new Pieces(schematic, symbols, nets, rails);
    schematic.parts().forEach(made::add);
    return made.pieces;
  }

  private void add(Part part) {
    Predicate<String> wired = pin -> nets.wired(part.pin(pin));
    if (Symbols.halved(part)) {
      halves(part, wired);
    } else if (Symbols.block(part)) {
      Map<String, Side> sides = sides(part, wired);
      put(part, 0, symbols.block(part, sides, pitch(part, sides)));
    } else {
      put(part, 0, symbols.form(part, wired));
    }
  }

  private void put(Part part, int unit, Form form) {
    String value = PartValue.of(part);
    double width = Math.max(TextSize.REF.width(part.ref()), TextSize.VALUE.width(value));
    pieces.add(new Piece(pieces.size(), part, unit, form, nets, width));
  }

  private void halves(Part part, Predicate<String> wired) {
    List<Integer> halves = Symbols.halves(part, wired);
    List<Integer> drawn = halves.isEmpty() ? List.of(1) : halves;
    for (int i = 0; i < drawn.size(); i++) {
      int half = drawn.get(i);
      put(
          part,
          drawn.size() > 1 ? half : 0,
          symbols.half(half, plusOnTop(part, half), wired, i == 0));
    }
  }

  /** The + input is on top where feedback comes to − and the signal does not. */
  private boolean plusOnTop(Part part, int half) {
    List<String> pins = Symbols.half(half);
    int minus = nets.of(part.pin(pins.get(0)));
    int plus = nets.of(part.pin(pins.get(1)));
    int out = nets.of(part.pin(pins.get(2)));
    if (minus == Nets.NONE || plus == Nets.NONE || out == Nets.NONE || rails.way(plus) != 0) {
      return false;
    }
    if (minus == out) {
      return true;
    }
    boolean back = false;
    for (Part other : schematic.parts()) {
      List<Integer> on = other.pins().stream().map(nets::of).toList();
      if (other.ref().equals(part.ref()) || !on.contains(minus)) {
        continue;
      }
      boolean grounded =
          on.size() == 2 && on.stream().anyMatch(net -> net != minus && rails.way(net) != 0);
      if (on.size() == 2 && on.contains(out)) {
        back = true;
      } else if (!grounded) {
        return false;
      }
    }
    return back && !joined(plus, out);
  }

  /** Whether one part alone lies between two nets. */
  private boolean joined(int one, int other) {
    return schematic.parts().stream()
        .map(part -> part.pins().stream().map(nets::of).toList())
        .anyMatch(on -> on.size() == 2 && on.contains(one) && on.contains(other));
  }

  /** Wired pins alone, unless none is. */
  private Map<String, Side> sides(Part part, Predicate<String> wired) {
    List<Leg> legs = part.kind().legs(part.fields());
    boolean none = legs.stream().noneMatch(leg -> wired.test(leg.pin()));
    var sides = new LinkedHashMap<String, Side>();
    int plain = 0;
    for (Leg leg : legs) {
      if (wired.test(leg.pin()) || (none && leg.role() != Leg.Role.UNUSED)) {
        sides.put(leg.pin(), side(part, leg, plain++));
      }
    }
    if (legs.stream().allMatch(leg -> leg.role() == Leg.Role.PLAIN) && !part.kind().source()) {
      int half = (sides.size() + 1) / 2;
      int i = 0;
      for (var entry : sides.entrySet()) {
        entry.setValue(i++ < half ? Side.LEFT : Side.RIGHT);
      }
    }
    return sides;
  }

  private Side side(Part part, Leg leg, int plain) {
    int way = rails.way(nets.of(part.pin(leg.pin())));
    return switch (leg.role()) {
      case PLUS -> Side.TOP;
      case MINUS -> Side.BOTTOM;
      case OUTPUT -> Side.RIGHT;
      case INPUT ->
          part.kind().name().equals("regulator")
              ? Side.LEFT
              : way > 0 ? Side.TOP : way < 0 ? Side.BOTTOM : Side.LEFT;
      default -> part.kind().source() ? Side.RIGHT : plain % 2 == 0 ? Side.LEFT : Side.RIGHT;
    };
  }

  /** Wider where whole rows of parts hang on a side's pins. */
  private int pitch(Part part, Map<String, Side> sides) {
    return rows(part, sides, Side.LEFT) > 1 || rows(part, sides, Side.RIGHT) > 1
        ? ROW_PITCH
        : PITCH;
  }

  private long rows(Part part, Map<String, Side> sides, Side side) {
    return sides.entrySet().stream()
        .filter(entry -> entry.getValue() == side)
        .map(entry -> nets.of(part.pin(entry.getKey())))
        .filter(net -> net != Nets.NONE && rails.way(net) == 0 && nets.pins(net).size() == 2)
        .flatMap(net -> nets.pins(net).stream())
        .filter(pin -> !pin.ref().equals(part.ref()))
        .filter(pin -> twoEnded(pin.ref()))
        .count();
  }

  private boolean twoEnded(String ref) {
    return schematic.parts().stream()
        .anyMatch(part -> part.ref().equals(ref) && part.pins().size() == 2);
  }
}
