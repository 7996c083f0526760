package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.document.picture.BoardPicture.Dot;
import org.holewise.document.picture.BoardPicture.Edge;
import org.holewise.document.picture.BoardPicture.Outline;
import org.holewise.document.picture.BoardPicture.RailLine;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Rail;

/** The bare board: its outline, strips, rails, holes, and the texts printed on it. */
record Ground(BoardModel model, Plan plan) {
  private static final List<String> HALVES = List.of("ae", "fj");
  private static final double STRIP = 8;
  private static final double LINE = 9.5;
  private static final int TEETH = 10;
  private static final double TOOTH = 5;

  List<Edge> edges() {
    return plan.sections().stream().map(section -> new Edge(edge(section))).toList();
  }

  /** A side where the board goes on is drawn as a break line. */
  private String edge(Section section) {
    double depth = plan.tracks().depth();
    var spots = new ArrayList<Spot>();
    for (int i = 0; i <= TEETH; i++) {
      double tooth = section.cutBefore() && i % 2 == 1 ? TOOTH : 0;
      spots.add(plan.spot(section.from() + 1 + tooth, 1 + i * (depth - 2) / TEETH));
    }
    for (int i = TEETH; i >= 0; i--) {
      double tooth = section.cutAfter() && i % 2 == 1 ? TOOTH : 0;
      spots.add(plan.spot(section.to() - 1 - tooth, 1 + i * (depth - 2) / TEETH));
    }
    var pen = Pen.plain().move(spots.get(0).x(), spots.get(0).y());
    spots.stream().skip(1).forEach(spot -> pen.line(spot.x(), spot.y()));
    return pen.close().path();
  }

  List<Box> strips() {
    var strips = new ArrayList<Box>();
    for (Section section : plan.sections()) {
      for (int column = section.first(); column <= section.last(); column++) {
        for (String half : HALVES) {
          strips.add(strip(section, column, half, STRIP));
        }
      }
    }
    return strips;
  }

  private Box strip(Section section, int column, String half, double grown) {
    return Box.between(
        plan.spot(section.at(column), plan.tracks().at(half.substring(0, 1))),
        plan.spot(section.at(column), plan.tracks().at(half.substring(1))),
        grown);
  }

  List<RailLine> rails() {
    var lines = new ArrayList<RailLine>();
    for (Section section : plan.sections()) {
      for (Rail rail : model.rails()) {
        parts(section, rail).forEach(part -> lines.add(line(section, rail, part)));
      }
    }
    return lines;
  }

  /** The shown columns of each piece of metal of a rail. */
  private static List<List<Integer>> parts(Section section, Rail rail) {
    return rail.columns().stream()
        .filter(section::shows)
        .map(column -> Rails.joined(rail, column))
        .distinct()
        .toList();
  }

  private RailLine line(Section section, Rail rail, List<Integer> part) {
    int first = part.get(0);
    int last = part.get(part.size() - 1);
    double from = section.shows(first) ? section.at(first) - LINE : section.from() + TOOTH + 2;
    double to = section.shows(last) ? section.at(last) + LINE : section.to() - TOOTH - 2;
    double outward = rail.track().endsWith("a") ? -LINE : LINE;
    double v = plan.tracks().at(rail.track()) + outward;
    String sign = rail.track().startsWith("+") ? "plus" : "minus";
    return new RailLine(sign, plan.spot(from, v), plan.spot(to, v));
  }

  List<Dot> holes(Set<Hole> used) {
    var dots = new ArrayList<Dot>();
    for (Section section : plan.sections()) {
      for (char row = 'a'; row <= 'j'; row++) {
        for (int column = section.first(); column <= section.last(); column++) {
          add(dots, new Hole(section.board(), String.valueOf(row), column), used);
        }
      }
      for (Rail rail : model.rails()) {
        for (int column : rail.columns().stream().filter(section::shows).toList()) {
          add(dots, new Hole(section.board(), rail.track(), column), used);
        }
      }
    }
    return dots;
  }

  private void add(List<Dot> dots, Hole hole, Set<Hole> used) {
    plan.spot(hole).ifPresent(spot -> dots.add(new Dot(hole, spot, used.contains(hole))));
  }

  /** Round the strip, or the shown parts of the rail, of a hole that is drawn. */
  List<Outline> outlines(Hole hole) {
    if (hole.rail()) {
      return plan.sections().stream()
          .filter(section -> section.board() == hole.board())
          .flatMap(section -> rail(section, hole).stream())
          .toList();
    }
    Section section = plan.section(hole).orElseThrow();
    String half = hole.track().compareTo("e") <= 0 ? HALVES.get(0) : HALVES.get(1);
    return List.of(new Outline(hole, strip(section, hole.column(), half, STRIP + 3)));
  }

  private Optional<Outline> rail(Section section, Hole hole) {
    Rail rail = model.rail(hole.track()).orElseThrow();
    var joined = Rails.joined(rail, hole.column()).stream().filter(section::shows).toList();
    if (joined.isEmpty()) {
      return Optional.empty();
    }
    double v = plan.tracks().at(hole.track());
    Spot from = plan.spot(section.at(joined.get(0)), v);
    Spot to = plan.spot(section.at(joined.get(joined.size() - 1)), v);
    return Optional.of(new Outline(hole, Box.between(from, to, STRIP + 3)));
  }

  /** Round the drawn columns of a patch; none where it has no drawn column or track. */
  List<Box> patches(Patch patch) {
    var across =
        patch.tracks().stream()
            .filter(plan.tracks()::has)
            .map(plan.tracks()::at)
            .mapToDouble(v -> v)
            .summaryStatistics();
    return plan.sections().stream()
        .filter(section -> across.getCount() > 0 && section.board() == patch.board())
        .filter(section -> section.first() <= patch.last() && section.last() >= patch.first())
        .map(
            section ->
                Box.between(
                    plan.spot(
                        section.at(Math.max(patch.first(), section.first())), across.getMin()),
                    plan.spot(section.at(Math.min(patch.last(), section.last())), across.getMax()),
                    STRIP + 3))
        .toList();
  }

  /** Row letters, column numbers, signs of the rails and their gaps. */
  void print(Labels labels) {
    for (Section section : plan.sections()) {
      for (double u : List.of(section.from() + 14, section.to() - 14)) {
        for (char row = 'a'; row <= 'j'; row++) {
          String text = String.valueOf(row);
          labels.fix(text, "row", plan.spot(u, plan.tracks().at(text)));
        }
        for (Rail rail : model.rails()) {
          String sign = rail.track().startsWith("+") ? "+" : "−";
          labels.fix(sign, "sign", plan.spot(u, plan.tracks().at(rail.track())));
        }
      }
      numbers(section, labels);
      gaps(section, labels);
    }
  }

  private void numbers(Section section, Labels labels) {
    for (int column = section.first(); column <= section.last(); column++) {
      if (column % 5 == 0 || column == 1) {
        for (double v : plan.tracks().numbers()) {
          labels.fix(String.valueOf(column), "column", plan.spot(section.at(column), v));
        }
      }
    }
  }

  private void gaps(Section section, Labels labels) {
    for (Rail rail : model.rails()) {
      for (int gap : rail.gaps()) {
        if (section.shows(gap)) {
          double v = plan.tracks().at(rail.track());
          labels.fix("gap", "gap", plan.spot(section.at(gap), v));
        }
      }
    }
  }
}
