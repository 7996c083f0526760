package org.holewise.document;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Part;

/** Whether an extra reading can be used: its condition and points exist, its id is its own. */
final class ExtraCheck {
  private final Exercise exercise;
  private final BenchRecord record;
  private final String at;

  private ExtraCheck(Exercise exercise, BenchRecord record, String at) {
    this.exercise = exercise;
    this.record = record;
    this.at = at;
  }

  /** Why it cannot be used; empty where it can. */
  static Optional<Finding> finding(
      Exercise exercise, BenchRecord record, Extra extra, String pointer) {
    return new ExtraCheck(exercise, record, pointer).finding(extra);
  }

  private Optional<Finding> finding(Extra extra) {
    if (RecordFindings.asks(exercise, extra.id())) {
      return found("/id", "extra-id-taken", extra.id());
    }
    var conditions = exercise.conditions().stream().map(Condition::name).toList();
    if (!conditions.contains(extra.when())) {
      return found("/when", "unknown-condition", extra.when(), String.join(", ", conditions));
    }
    if (extra.occasion().after() > 0 && exercise.condition(extra.when()).clock().isEmpty()) {
      return found("/after", "no-clock", extra.when());
    }
    return points(extra.measure());
  }

  private Optional<Finding> points(Measure measure) {
    if (measure instanceof Measure.Seen seen) {
      return lamp(seen.ref());
    }
    List<Probe> points = measure.points();
    for (int i = 0; i < points.size(); i++) {
      var finding = point("/" + measure.key() + within(measure, i), points.get(i));
      if (finding.isPresent()) {
        return finding;
      }
    }
    return Optional.empty();
  }

  /** Where inside the measure a point stands. */
  private static String within(Measure measure, int point) {
    if (measure instanceof Measure.Compared) {
      return (point < 2 ? "/of/" : "/to/") + point % 2;
    }
    return measure.points().size() == 1 ? "" : "/" + point;
  }

  private Optional<Finding> lamp(String ref) {
    Optional<Part> part = exercise.part(ref);
    return part.isEmpty()
        ? found("/seen", "unknown-ref", ref)
        : DeclaredParts.lights(part.get().kind())
            ? Optional.empty()
            : found("/seen", "no-lamp", ref);
  }

  private Optional<Finding> point(String child, Probe probe) {
    if (probe instanceof Probe.AtPin pin) {
      Optional<Part> part = exercise.part(pin.pin().ref());
      return part.isEmpty()
          ? found(child, "unknown-ref", pin.pin().ref())
          : part.get().pins().contains(pin.pin())
              ? Optional.empty()
              : found(child, "unknown-pin", pin.pin());
    }
    var hole = ((Probe.AtHole) probe).hole();
    BoardModel board = record.build().map(Build::board).orElse(exercise.board());
    return board.strip(hole).isPresent()
        ? Optional.empty()
        : found(child, "probe-off-board", hole, board.name());
  }

  private Optional<Finding> found(String child, String kind, Object... parts) {
    return Optional.of(Finding.of(at + child, kind, parts));
  }
}
