package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.document.picture.BoardPicture.Lead;
import org.holewise.document.picture.BoardPicture.Outline;
import org.holewise.document.picture.BoardPicture.Ring;
import org.holewise.document.picture.BoardPicture.Wire;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** Puts a build on its board, part by part, then what points at it, then the texts. */
final class Assembly {
  private static final int PATTERNS = 4;

  private final Build build;
  private final List<Part> parts;
  private final Seats seats;
  private final Holdings holdings;
  private final Plan plan;
  private final Ground ground;
  private final Beside beside;
  private final List<Lead> leads = new ArrayList<>();
  private final List<Body> bodies = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();

  /** A lead that is on the board: its pin, its hole, where that is. */
  record Seated(Pin pin, Hole hole, Spot at) {}

  Assembly(Build build, List<Part> parts, View view, boolean whole) {
    this.build = build;
    this.parts = parts;
    this.seats = Seats.of(build);
    this.holdings = Holdings.of(build, parts);
    boolean room =
        build.placed().stream().anyMatch(placed -> part(placed).filter(this::off).isPresent());
    double from = room ? Beside.room(view) : 1;
    var tracks = Tracks.of(build.board());
    this.plan = new Plan(view, tracks, Section.of(build.board(), seats.taken(), whole, from));
    this.ground = new Ground(build.board(), plan);
    this.beside = new Beside(plan);
  }

  BoardPicture picture(Highlight highlight) {
    var labels = new Labels(plan.frame());
    ground.print(labels);
    for (int i = 0; i < build.placed().size(); i++) {
      place(i);
    }
    bodies.addAll(beside.draw(labels, leads));
    for (int i = 0; i < build.links().size(); i++) {
      link(i);
    }
    List<Ring> rings = rings(highlight);
    List<Outline> outlines = outlines(highlight);
    outlines.forEach(outline -> labels.avoid(outline.box()));
    new Naming(parts, labels).name(bodies, leads, wires, rings);
    return new BoardPicture(
        plan.view(),
        plan.frame(),
        plan.sections(),
        ground.edges(),
        ground.strips(),
        ground.rails(),
        ground.holes(seats.taken()),
        holdings.metals(seats, plan, ground),
        outlines,
        highlight.patches().stream().flatMap(patch -> ground.patches(patch).stream()).toList(),
        List.copyOf(wires),
        List.copyOf(leads),
        List.copyOf(bodies),
        rings,
        labels.placed());
  }

  private Optional<Part> part(Placed placed) {
    return parts.stream().filter(part -> part.ref().equals(placed.ref())).findFirst();
  }

  private boolean off(Part part) {
    return part.kind().footprint(part.fields()) instanceof Footprint.Wires;
  }

  private void place(int index) {
    Placed placed = build.placed().get(index);
    part(placed)
        .ifPresent(
            part -> {
              List<Seated> seated = seated(index, part);
              if (seated.isEmpty()) {
                return;
              }
              if (off(part)) {
                beside.add(part, seated);
              } else {
                onBoard(part, seated);
              }
            });
  }

  private List<Seated> seated(int index, Part part) {
    var seated = new ArrayList<Seated>();
    for (Pin pin : part.pins()) {
      var hole = seats.lead(index, pin.name());
      var spot = hole.flatMap(plan::spot);
      if (hole.isPresent() && spot.isPresent()) {
        seated.add(new Seated(pin, hole.get(), spot.get()));
      }
    }
    return seated;
  }

  private void onBoard(Part part, List<Seated> seated) {
    if (part.kind().footprint(part.fields()) instanceof Footprint.Dip) {
      chip(part, seated);
      return;
    }
    Form form = Form.of(part);
    Pen frame = frame(form, seated.stream().map(Seated::at).toList());
    bodies.add(form.body(frame, part));
    for (Seated lead : seated) {
      Spot entry = form.entry(frame.in(lead.at()));
      Spot in = frame.out(entry.x(), entry.y());
      String path = Pen.plain().move(lead.at().x(), lead.at().y()).line(in.x(), in.y()).path();
      leads.add(new Lead(lead.pin(), lead.hole(), lead.at(), "lead", path));
    }
  }

  private void chip(Part part, List<Seated> seated) {
    ChipForm form = ChipForm.of(seated);
    bodies.add(form.body(part));
    for (Seated lead : seated) {
      Spot in = form.entry(lead.at());
      String path = Pen.plain().move(lead.at().x(), lead.at().y()).line(in.x(), in.y()).path();
      leads.add(new Lead(lead.pin(), lead.hole(), lead.at(), "lead", path));
    }
  }

  private Pen frame(Form form, List<Spot> at) {
    Spot first = at.get(0);
    Spot last = at.get(at.size() - 1);
    Spot middle = Spot.middle(at);
    if (form.sits() == Form.Sits.OVER) {
      return Pen.at(middle, plan.spot(0, 0), plan.spot(1, 0));
    }
    Pen over =
        at.size() == 1
            ? Pen.at(middle, plan.spot(0, 0), plan.spot(1, 0))
            : Pen.at(middle, first, last);
    boolean room = first.distance(last) >= 2 * form.halfLength + 8;
    if (form.sits() == Form.Sits.BETWEEN && room) {
      return over;
    }
    Spot aside = over.out(0, -form.halfWidth - 9);
    return Pen.at(aside, over.out(0, 0), over.out(1, 0));
  }

  private void link(int index) {
    var from = seats.link(index, 0).flatMap(plan::spot);
    var to = seats.link(index, 1).flatMap(plan::spot);
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    Pen pen = Pen.at(from.get(), from.get(), to.get());
    double length = from.get().distance(to.get());
    double bow = length < 2 * Tracks.PITCH ? 0 : Math.min(16, 4 + length / 14);
    double side = index % 2 == 0 ? bow : -bow;
    String path = pen.move(0, 0).curve(length / 4, side, length * 3 / 4, side, length, 0).path();
    Link link = build.links().get(index);
    int pattern = index % PATTERNS + 1;
    wires.add(new Wire(index + 1, pattern, from.get(), to.get(), path, link, holdings.at(link)));
  }

  private List<Ring> rings(Highlight highlight) {
    var rings = new LinkedHashMap<Hole, Ring>();
    for (Hole hole : highlight.ringed()) {
      seats
          .of(build, hole)
          .ifPresent(
              seat -> plan.spot(seat).ifPresent(at -> rings.putIfAbsent(seat, new Ring(hole, at))));
    }
    return List.copyOf(rings.values());
  }

  private List<Outline> outlines(Highlight highlight) {
    var holes = new LinkedHashSet<Hole>();
    highlight.dashed().forEach(hole -> seats.of(build, hole).ifPresent(holes::add));
    Map<Box, Outline> outlines = new LinkedHashMap<>();
    for (Hole hole : holes) {
      if (plan.spot(hole).isPresent()) {
        ground.outlines(hole).forEach(outline -> outlines.putIfAbsent(outline.box(), outline));
      }
    }
    return List.copyOf(outlines.values());
  }
}
