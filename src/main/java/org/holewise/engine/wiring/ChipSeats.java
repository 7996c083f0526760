package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Placed;
import org.holewise.engine.board.Seat;
import org.holewise.engine.netlist.DisjointSets;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;

/**
 * Chips that sit wrongly as a whole: turned round, some columns off, on one side of the groove. A
 * chip's pins cannot be moved one by one, so such a chip is put in anew, which is one repair, and
 * the rest is compared as if it had been.
 *
 * <p>A seat is worth the pins whose strip is joined to other parts of their wanted net, less those
 * that are joined to others. Another seat is taken where it is worth two pins more than the chip's
 * own.
 */
final class ChipSeats {
  /** How many columns off a chip is looked for. */
  private static final int COLUMNS = 2;

  private static final int MARGIN = 2;

  private final Terminals terminals;
  private final List<Placed> placed;
  private final Build before;

  /** Strips that links join. */
  private final DisjointSets sets;

  private final List<Repair.PlacePart> repairs = new ArrayList<>();

  private ChipSeats(Terminals terminals, Build build) {
    this.terminals = terminals;
    this.before = build;
    this.placed = new ArrayList<>(build.placed());
    this.sets = links(build);
    for (int part = 0; part < terminals.parts.size(); part++) {
      reseat(part);
    }
  }

  static ChipSeats of(Terminals terminals, Build build) {
    return new ChipSeats(terminals, build);
  }

  /** The build with such chips put in anew. */
  Build build() {
    return repairs.isEmpty() ? before : new Build(before.board(), placed, before.links());
  }

  List<Repair.PlacePart> repairs() {
    return repairs;
  }

  private void reseat(int number) {
    Part part = terminals.parts.get(number);
    Optional<Placed> own = before.placed(part.ref());
    Optional<Seat> seat = own.flatMap(there -> there.seat(part)).filter(s -> !s.first().rail());
    if (seat.isEmpty()) {
      return;
    }
    boolean sound = fits(seat.get(), part);
    var around = around(number);
    int best = sound ? worth(seat.get(), number, around) + MARGIN - 1 : Integer.MIN_VALUE;
    Seat better = seat.get();
    for (Seat other : others(seat.get())) {
      if (fits(other, part)) {
        int worth = worth(other, number, around);
        if (worth > best) {
          best = worth;
          better = other;
        }
      }
    }
    if (!better.equals(seat.get())) {
      take(own.get(), part, seat.get(), better);
    }
  }

  private void take(Placed own, Part part, Seat from, Seat to) {
    var holes = to.holes(part.kind().pins(part.fields()));
    placed.set(placed.indexOf(own), new Placed(own.ref(), holes, Optional.empty(), own.marked()));
    int columns = to.first().column() - from.first().column();
    repairs.add(
        new Repair.PlacePart(
            part.ref(),
            Optional.of(
                new Repair.Reseat(
                    from.first(),
                    to.first(),
                    from.turned() != to.turned(),
                    from.acrossGroove() ? columns : 0))));
  }

  /** Across the groove with every pin in a hole of the board. */
  private boolean fits(Seat seat, Part part) {
    var holes = seat.holes(part.kind().pins(part.fields()));
    return seat.acrossGroove()
        && holes.size() == seat.chip().pins()
        && holes.values().stream().allMatch(hole -> before.board().stripOrNone(hole) >= 0);
  }

  /** Turned round, shifted, both; across the groove for one that is not. */
  private static List<Seat> others(Seat seat) {
    var all = new ArrayList<Seat>();
    Seat start = seat.acrossGroove() ? seat : across(seat);
    for (Seat way : List.of(start, start.turnedRound())) {
      all.add(way);
      for (int columns = 1; columns <= COLUMNS; columns++) {
        all.add(way.shifted(-columns));
        all.add(way.shifted(columns));
      }
    }
    return all;
  }

  /** The seat across the groove with the same column and way round. */
  private static Seat across(Seat seat) {
    Footprint.Dip chip = seat.chip();
    Hole first = seat.first();
    String row = seat.turned() ? "f" : "e";
    return new Seat(new Hole(first.board(), row, first.column()), seat.turned(), chip);
  }

  /** What the best exchange of its pins is worth there. */
  private int worth(Seat seat, int number, Map<Integer, Set<Integer>> around) {
    Part part = terminals.parts.get(number);
    List<String> pins = part.kind().pins(part.fields());
    var holes = seat.holes(pins);
    List<Set<Integer>> there = new ArrayList<>();
    for (String pin : pins) {
      int strip = before.board().stripOrNone(holes.getOrDefault(pin, seat.first()));
      there.add(around.getOrDefault(sets.find(strip), Set.of()));
    }
    int best = worth(number, pins, there, Map.of());
    for (var exchange : part.kind().exchanges(part.fields())) {
      best = Math.max(best, worth(number, pins, there, exchange));
    }
    return best;
  }

  private int worth(
      int number, List<String> pins, List<Set<Integer>> there, Map<String, String> exchange) {
    int worth = 0;
    for (int k = 0; k < pins.size(); k++) {
      String as = exchange.getOrDefault(pins.get(k), pins.get(k));
      int net = terminals.net[terminals.firstPin[number] + pins.indexOf(as)];
      Set<Integer> nets = there.get(k);
      boolean used = terminals.size[net] > 1;
      worth += nets.contains(net) ? 1 : nets.isEmpty() ? 0 : -1;
      worth -= used && nets.isEmpty() ? 1 : 0;
    }
    return worth;
  }

  /** Wanted nets of other parts' pins, by what their strips are linked to. */
  private Map<Integer, Set<Integer>> around(int number) {
    Map<Integer, Set<Integer>> around = new HashMap<>();
    Map<String, Placed> first = new LinkedHashMap<>();
    before.placed().forEach(part -> first.putIfAbsent(part.ref(), part));
    for (int pin = 0; pin < terminals.pins.size(); pin++) {
      Placed there = first.get(terminals.pins.get(pin).ref());
      if (there == null || terminals.part(pin) == number) {
        continue;
      }
      String name = terminals.pins.get(pin).name();
      int strip = there.hole(name).map(before.board()::stripOrNone).orElse(-1);
      if (strip >= 0) {
        around.computeIfAbsent(sets.find(strip), set -> new HashSet<>()).add(terminals.net[pin]);
      }
    }
    return around;
  }

  private static DisjointSets links(Build before) {
    var sets = new DisjointSets(BoardModel.MOST_BOARDS * before.board().strips());
    before
        .links()
        .forEach(
            link -> {
              int from = before.board().stripOrNone(link.from());
              int to = before.board().stripOrNone(link.to());
              if (from >= 0 && to >= 0) {
                sets.union(from, to);
              }
            });
    return sets;
  }
}
