package org.holewise.engine.board;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.holewise.engine.part.Footprint;

/**
 * How a chip sits on a board: where its first pin is and which way its notch looks. With the notch
 * towards column 1 pins run up the columns along the row of pin 1 and back along the row beyond it,
 * counted from row a; turned round, they run down the columns and the other row lies nearer to row
 * a. Immutable; whether the board has the holes is not checked here.
 */
public record Seat(Hole first, boolean turned, Footprint.Dip chip) {
  private static final String ROWS = "abcdefghij";

  /** The groove is as wide as two rows. */
  private static final int GROOVE = 2;

  /** As written by its first pin: in the half of row a with the notch towards column 1. */
  public static Seat of(Hole first, Footprint.Dip chip) {
    return new Seat(first, ROWS.indexOf(first.track()) >= 5, chip);
  }

  /** The seat in which pins have these holes; empty where the package does not reach so. */
  public static Optional<Seat> of(Map<String, Hole> holes, List<String> pins, Footprint.Dip chip) {
    Hole first = holes.get(pins.get(0));
    if (first == null || first.rail()) {
      return Optional.empty();
    }
    for (boolean turned : new boolean[] {false, true}) {
      var seat = new Seat(first, turned, chip);
      var own = seat.holes(pins);
      if (holes.entrySet().stream().allMatch(lead -> lead.getValue().equals(own.get(lead.getKey())))
          && holes.keySet().containsAll(pins)) {
        return Optional.of(seat);
      }
    }
    return Optional.empty();
  }

  /** The holes of all pins that lie over a row, by their names in order. */
  public Map<String, Hole> holes(List<String> pins) {
    var holes = new LinkedHashMap<String, Hole>();
    for (int i = 0; i < pins.size(); i++) {
      String name = pins.get(i);
      hole(i).ifPresent(hole -> holes.put(name, hole));
    }
    return holes;
  }

  /** The hole of a pin, counted from 0; empty over the groove or beyond the last row. */
  private Optional<Hole> hole(int pin) {
    int half = chip.pins() / 2;
    int along = pin < half ? pin : chip.pins() - 1 - pin;
    int column = first.column() + (turned ? -along : along);
    OptionalInt row = row(pin < half ? 0 : chip.rowSpacing());
    return first.rail() || row.isEmpty() || column < 1
        ? Optional.empty()
        : Optional.of(
            new Hole(first.board(), ROWS.substring(row.getAsInt()).substring(0, 1), column));
  }

  /** Number of the row so many steps across from that of pin 1. */
  private OptionalInt row(int steps) {
    int from = ROWS.indexOf(first.track());
    int across = from + (from >= 5 ? GROOVE : 0) + (turned ? -steps : steps);
    if (across < 0 || across >= ROWS.length() + GROOVE || across == 5 || across == 6) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(across > 6 ? across - GROOVE : across);
  }

  /** Whether its two rows lie on either side of the groove. */
  public boolean acrossGroove() {
    OptionalInt other = row(chip.rowSpacing());
    return other.isPresent() && (other.getAsInt() >= 5) != (ROWS.indexOf(first.track()) >= 5);
  }

  /** The same holes with the chip turned round in them: pin 1 where the middle pin was. */
  public Seat turnedRound() {
    int far = first.column() + (turned ? -1 : 1) * (chip.pins() / 2 - 1);
    return row(chip.rowSpacing()).stream()
        .mapToObj(row -> new Hole(first.board(), ROWS.substring(row, row + 1), far))
        .map(hole -> new Seat(hole, !turned, chip))
        .findFirst()
        .orElse(this);
  }

  /** So many columns further up. */
  public Seat shifted(int columns) {
    return new Seat(new Hole(first.board(), first.track(), first.column() + columns), turned, chip);
  }
}
