package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;

/** A bench's record with something changed that ought not to matter, or ought to. */
final class Transformed {
  private static final String ROWS = "abcdefghij";

  private Transformed() {}

  static BenchRecord shifted(BenchRecord record, int columns) {
    return moved(record, hole -> new Hole(hole.board(), hole.track(), hole.column() + columns));
  }

  /** Turned over: row a becomes j, and the rails beside them change places. */
  static BenchRecord mirrored(BenchRecord record) {
    return moved(
        record,
        hole ->
            new Hole(
                hole.board(),
                hole.rail()
                    ? hole.track().substring(0, 1) + opposite(hole.track().substring(1))
                    : opposite(hole.track()),
                hole.column()));
  }

  private static String opposite(String row) {
    int at = ROWS.indexOf(row);
    return ROWS.substring(9 - at, 10 - at);
  }

  static BenchRecord moved(BenchRecord record, UnaryOperator<Hole> move) {
    Build build = record.build().orElseThrow();
    var placed = new ArrayList<Placed>();
    for (Placed part : build.placed()) {
      Map<String, Hole> holes = new LinkedHashMap<>();
      part.holes().forEach((pin, hole) -> holes.put(pin, move.apply(hole)));
      placed.add(new Placed(part.ref(), holes, part.pin1(), part.marked()));
    }
    List<Link> links =
        build.links().stream()
            .map(link -> new Link(move.apply(link.from()), move.apply(link.to())))
            .toList();
    return with(record, new Build(build.board(), placed, links));
  }

  /** Two parts put in each other's holes. */
  static BenchRecord exchanged(BenchRecord record, String one, String other) {
    Build build = record.build().orElseThrow();
    var placed = new ArrayList<Placed>();
    for (Placed part : build.placed()) {
      String ref = part.ref().equals(one) ? other : part.ref().equals(other) ? one : part.ref();
      placed.add(new Placed(ref, part.holes(), part.pin1(), part.marked()));
    }
    placed.sort(java.util.Comparator.comparing(Placed::ref));
    return with(record, new Build(build.board(), placed, build.links()));
  }

  /** A link laid in two pieces over a strip that nothing else uses. */
  static BenchRecord inTwoPieces(BenchRecord record, int link, Hole one, Hole other) {
    Build build = record.build().orElseThrow();
    var links = new ArrayList<>(build.links());
    Link whole = links.get(link);
    links.set(link, new Link(whole.from(), one));
    links.add(new Link(other, whole.to()));
    return with(record, new Build(build.board(), build.placed(), links));
  }

  static BenchRecord withLead(BenchRecord record, String ref, String pin, Hole hole) {
    Build build = record.build().orElseThrow();
    var placed = new ArrayList<Placed>();
    for (Placed part : build.placed()) {
      Map<String, Hole> holes = new LinkedHashMap<>(part.holes());
      if (part.ref().equals(ref)) {
        holes.put(pin, hole);
      }
      placed.add(new Placed(part.ref(), holes, part.pin1(), part.marked()));
    }
    return with(record, new Build(build.board(), placed, build.links()));
  }

  static BenchRecord marked(BenchRecord record, String ref, String text) {
    Build build = record.build().orElseThrow();
    List<Placed> placed =
        build.placed().stream()
            .map(
                part ->
                    part.ref().equals(ref)
                        ? new Placed(ref, part.holes(), part.pin1(), java.util.Optional.of(text))
                        : part)
            .toList();
    return with(record, new Build(build.board(), placed, build.links()));
  }

  static BenchRecord with(BenchRecord record, Build build) {
    return new BenchRecord(
        record.exercise(),
        record.meter(),
        java.util.Optional.of(build),
        record.readings(),
        record.extra());
  }
}
