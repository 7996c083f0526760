package org.holewise.drawing.place;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.symbol.Turn;
import org.holewise.engine.exercise.Seat;

/**
 * Puts pieces where their author wants them, and all others in the free cells nearest to where they
 * would have stood beside those.
 */
final class Seating {
  private static final int CELL = 40;
  private static final int ROOM = 20;
  private static final int RINGS = 60;

  private final List<Piece> pieces;
  private final List<Area> taken = new ArrayList<>();

  private Seating(List<Piece> pieces) {
    this.pieces = pieces;
  }

  static void seat(List<Piece> pieces, Map<String, Seat> seats) {
    new Seating(pieces).seat(seats);
  }

  private void seat(Map<String, Seat> seats) {
    var seated = new ArrayList<Piece>();
    int dx = 0;
    int dy = 0;
    Set<String> done = new HashSet<>();
    for (Piece piece : pieces) {
      Optional<Seat> seat = Optional.ofNullable(seats.get(piece.part().ref()));
      if (seat.isPresent() && done.add(piece.part().ref())) {
        dx -= piece.x;
        dy -= piece.y;
        put(piece, seat.get());
        dx += piece.x;
        dy += piece.y;
        seated.add(piece);
      }
    }
    seated.forEach(piece -> taken.add(area(piece)));
    int n = Math.max(1, seated.size());
    for (Piece piece : pieces) {
      if (!seated.contains(piece)) {
        settle(piece, rounded(piece.x + dx / n, CELL / 2), rounded(piece.y + dy / n, CELL / 2));
      }
    }
  }

  private static void put(Piece piece, Seat seat) {
    piece.x = seat.column() * CELL;
    piece.y = seat.row() * CELL;
    piece.turn(new Turn(seat.turn() / 90, seat.mirror()));
  }

  private static int rounded(int value, int step) {
    return Math.floorDiv(value + step / 2, step) * step;
  }

  /** To the nearest place that is free, ring by ring. */
  private void settle(Piece piece, int x, int y) {
    for (int ring = 0; ring < RINGS; ring++) {
      for (int i = -ring; i <= ring; i++) {
        for (int[] at : new int[][] {{i, -ring}, {i, ring}, {-ring, i}, {ring, i}}) {
          piece.x = x + at[0] * CELL / 2;
          piece.y = y + at[1] * CELL / 2;
          Area area = area(piece);
          if (taken.stream().noneMatch(area::meets)) {
            taken.add(area);
            return;
          }
        }
      }
    }
  }

  private static Area area(Piece piece) {
    Area reach = Heights.reach(piece).moved(piece.x, piece.y);
    return new Area(
        reach.x() - ROOM / 2.0,
        reach.y() - ROOM / 2.0,
        reach.width() + ROOM + Math.min(piece.labelWidth(), 2 * CELL),
        reach.height() + ROOM);
  }
}
