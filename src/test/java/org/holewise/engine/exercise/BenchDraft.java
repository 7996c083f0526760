package org.holewise.engine.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;

/** A bench's record written in a test. */
public final class BenchDraft {
  private final Exercise exercise;
  private final List<Placed> placed = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<String, Written> readings = new LinkedHashMap<>();
  private final List<Extra> extra = new ArrayList<>();

  public BenchDraft(Exercise exercise) {
    this.exercise = exercise;
  }

  /** A part's leads in the order of its pins: {@code place("R1", "f8 f12")}. */
  public BenchDraft place(String ref, String holes) {
    String[] written = holes.split(" ");
    Map<String, Hole> byPin = new LinkedHashMap<>();
    var pins = exercise.part(ref).orElseThrow().pins();
    for (int i = 0; i < written.length; i++) {
      byPin.put(pins.get(i).name(), hole(written[i]));
    }
    placed.add(new Placed(ref, byPin, Optional.empty(), Optional.empty()));
    return this;
  }

  public BenchDraft link(String from, String to) {
    links.add(new Link(hole(from), hole(to)));
    return this;
  }

  public BenchDraft read(String id, String text) {
    readings.put(id, Written.text(text));
    return this;
  }

  public BenchDraft read(String id, double si) {
    readings.put(id, Written.number(si));
    return this;
  }

  public BenchDraft extra(String id, Measure measure, String when, double si) {
    extra.add(new Extra(id, measure, when, Written.number(si)));
    return this;
  }

  public static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }

  public BenchRecord record() {
    Optional<Build> build =
        placed.isEmpty() && links.isEmpty()
            ? Optional.empty()
            : Optional.of(new Build(exercise.board(), placed, links));
    return new BenchRecord(exercise.slug(), exercise.meter(), build, readings, extra);
  }
}
