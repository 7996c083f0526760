package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;

/**
 * The physical hole in which each end of a lead or link is drawn. A row's hole is itself. Any
 * column of a rail stands for the rail there, so an end without a hole of its own goes to the
 * nearest free one. Ends on no hole of the board have no seat.
 */
final class Seats {
  private final BoardModel model;
  private final Map<String, Hole> seats = new HashMap<>();
  private final Set<Hole> taken = new HashSet<>();

  private record End(String key, Hole hole, List<Hole> partners) {}

  private Seats(BoardModel model) {
    this.model = model;
  }

  static Seats of(Build build) {
    var seats = new Seats(build.board());
    List<End> ends = ends(build);
    ends.stream()
        .filter(end -> seats.model.has(end.hole()))
        .forEach(end -> seats.sit(end, end.hole()));
    ends.stream()
        .filter(end -> !seats.model.has(end.hole()) && end.hole().rail())
        .forEach(end -> seats.nearest(end).ifPresent(hole -> seats.sit(end, hole)));
    return seats;
  }

  Optional<Hole> lead(int placed, String pin) {
    return Optional.ofNullable(seats.get(placed + "." + pin));
  }

  Optional<Hole> link(int link, int end) {
    return Optional.ofNullable(seats.get("link " + link + "." + end));
  }

  /** Where a hole that is pointed at is drawn: where an end written so sits, else the nearest. */
  Optional<Hole> of(Build build, Hole hole) {
    return ends(build).stream()
        .filter(end -> end.hole().equals(hole) && seats.containsKey(end.key()))
        .map(end -> seats.get(end.key()))
        .findFirst()
        .or(
            () ->
                model.has(hole)
                    ? Optional.of(hole)
                    : hole.rail() ? nearest(new End("", hole, List.of())) : Optional.empty());
  }

  /** Every hole in use. */
  Set<Hole> taken() {
    return taken;
  }

  private void sit(End end, Hole hole) {
    seats.put(end.key(), hole);
    taken.add(hole);
  }

  private Optional<Hole> nearest(End end) {
    Hole hole = end.hole();
    int wanted =
        hole.column() > 0
            ? hole.column()
            : end.partners().stream()
                .mapToInt(Hole::column)
                .filter(c -> c > 0)
                .findFirst()
                .orElse(1);
    var from = new Hole(hole.board(), hole.track(), wanted);
    return Rails.nearest(model, from, c -> !taken.contains(new Hole(hole.board(), hole.track(), c)))
        .map(c -> new Hole(hole.board(), hole.track(), c));
  }

  private static List<End> ends(Build build) {
    var ends = new ArrayList<End>();
    for (int i = 0; i < build.placed().size(); i++) {
      Placed placed = build.placed().get(i);
      String key = i + ".";
      var all = List.copyOf(placed.holes().values());
      placed.holes().forEach((pin, hole) -> ends.add(new End(key + pin, hole, all)));
    }
    for (int i = 0; i < build.links().size(); i++) {
      Link link = build.links().get(i);
      for (int end = 0; end < 2; end++) {
        ends.add(new End("link " + i + "." + end, link.end(end), List.of(link.end(1 - end))));
      }
    }
    return ends;
  }
}
