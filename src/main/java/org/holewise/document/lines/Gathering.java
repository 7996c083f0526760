package org.holewise.document.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.lines.Statement.Links;
import org.holewise.document.lines.Statement.OnBoard;
import org.holewise.document.lines.Statement.Places;
import org.holewise.document.lines.Statement.Reads;
import org.holewise.document.lines.Statement.ReadsExtra;
import org.holewise.document.lines.Statement.Silent;
import org.holewise.document.lines.Statement.WithMeter;
import org.holewise.document.lines.Statement.Wrong;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Written;

/** Gathers statements into a record; what is said twice is wrong the second time. */
final class Gathering {
  private final Exercise exercise;
  private final List<Line> lines = new ArrayList<>();
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Map<String, Integer> saidOn = new LinkedHashMap<>();
  private final List<Placed> placed = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<String, Written> readings = new LinkedHashMap<>();
  private final List<Extra> extra = new ArrayList<>();
  private BoardModel board;
  private String meter;

  Gathering(Exercise exercise) {
    this.exercise = exercise;
    this.board = exercise.board();
    this.meter = exercise.meter();
  }

  void add(int number, String text, Statement statement) {
    Optional<Wrong> wrong =
        statement instanceof Wrong w ? Optional.of(w) : twice(number, name(statement));
    if (wrong.isEmpty()) {
      put(number, statement);
    }
    var problem = wrong.map(w -> new Line.Problem(w.kind(), w.parts()));
    lines.add(new Line(number, text, problem));
  }

  Sheet sheet() {
    boolean laid = !placed.isEmpty() || !links.isEmpty();
    var build = laid ? Optional.of(new Build(board, placed, links)) : Optional.<Build>empty();
    return new Sheet(
        lines,
        new BenchRecord(exercise.slug(), meter, build, readings, List.copyOf(extra)),
        places);
  }

  private Optional<Wrong> twice(int number, String name) {
    Integer before = name.isEmpty() ? null : saidOn.putIfAbsent(name, number);
    return before == null
        ? Optional.empty()
        : Optional.of(
            Wrong.of("said-twice", name.substring(name.indexOf(' ') + 1), String.valueOf(before)));
  }

  /** What may be said only once is known by this; empty for the rest. */
  private static String name(Statement statement) {
    if (statement instanceof Places p) {
      return "part " + p.ref();
    }
    if (statement instanceof Reads r) {
      return "reading " + r.id();
    }
    if (statement instanceof ReadsExtra x) {
      return x.id().isEmpty() ? "" : "extra " + x.id();
    }
    return statement instanceof OnBoard ? "board" : statement instanceof WithMeter ? "meter" : "";
  }

  private void put(int number, Statement statement) {
    if (statement instanceof Places p) {
      places.put("/build/placed/" + placed.size(), number);
      placed.add(new Placed(p.ref(), p.holes(), p.pin1(), p.marked()));
    } else if (statement instanceof Links l) {
      places.put("/build/links/" + links.size(), number);
      links.add(l.link());
    } else if (statement instanceof Reads r) {
      places.put("/build/readings/" + r.id(), number);
      readings.put(r.id(), Written.text(r.text()));
    } else if (statement instanceof ReadsExtra x) {
      places.put("/build/extra/" + extra.size(), number);
      String id = x.id().isEmpty() ? "x" + (extra.size() + 1) : x.id();
      extra.add(new Extra(id, x.measure(), x.occasion(), Written.text(x.text())));
    } else if (statement instanceof OnBoard b) {
      places.put("/build/board", number);
      board = b.board();
    } else if (statement instanceof WithMeter m) {
      places.put("/build/meter", number);
      meter = m.meter();
    } else if (!(statement instanceof Silent)) {
      throw new IllegalArgumentException("not to be gathered: " + statement);
    }
  }
}
