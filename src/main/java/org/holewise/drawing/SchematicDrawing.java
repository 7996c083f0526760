package org.holewise.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.drawing.check.Check;
import org.holewise.drawing.check.Check.Fault;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.label.Labels;
import org.holewise.drawing.place.Layout;
import org.holewise.drawing.place.Piece;
import org.holewise.drawing.place.Placer;
import org.holewise.drawing.place.Placer.Choice;
import org.holewise.drawing.route.Wiring;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.End;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawing.Mark;
import org.holewise.drawing.sheet.Drawing.Text;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.drawing.sheet.Drawn.Undrawable;
import org.holewise.drawing.sheet.Drawn.Why;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.drawing.symbol.Inside;
import org.holewise.drawing.symbol.MarkForms;
import org.holewise.drawing.symbol.Symbols;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.PartValue;
import org.holewise.engine.part.Pin;

/**
 * Draws schematics. Pure and deterministic: the same schematic gives the same drawing on every
 * machine. Safe for threads; some milliseconds a drawing.
 */
public final class SchematicDrawing {
  private static final double MARGIN = 14;

  /** Of so many that are clean the best is taken; one without a crossing is enough. */
  private static final int ENOUGH = 3;

  /**
   * After so much looking for ways the next choice is tried only where none is clean yet. A tangle
   * takes about half a second by then; what books draw takes a hundredth of it.
   */
  private static final long LONG = 500_000;

  /** After so much none is tried any more. */
  private static final long LONGEST = 3_000_000;

  /** Tried in turn. */
  private static final List<Choice> CHOICES =
      List.of(
          new Choice(true, true, 20),
          new Choice(false, true, 20),
          new Choice(true, false, 20),
          new Choice(false, true, 40),
          new Choice(false, false, 40),
          new Choice(false, true, 70),
          new Choice(false, false, 110));

  private SchematicDrawing() {}

  /**
   * An attempt: what came out, what is wrong with it, how good it is (less is better), and how much
   * was looked at for its wires.
   */
  private record Attempt(Drawing drawing, List<Fault> faults, double cost, long looked) {}

  public static Drawn of(Exercise exercise, SymbolStyle style) {
    return of(Schematic.of(exercise), style);
  }

  public static Drawn of(Schematic schematic, SymbolStyle style) {
    if (schematic.parts().isEmpty()) {
      return new Undrawable(Why.EMPTY, List.of(), List.of());
    }
    Optional<Attempt> best = Optional.empty();
    List<Choice> choices = choices(schematic);
    int sound = 0;
    long looked = 0;
    for (int i = 0; i < choices.size() && sound < ENOUGH; i++) {
      if (looked > (sound > 0 ? LONG : LONGEST)) {
        break;
      }
      Attempt attempt =
          attempt(schematic, style, Placer.place(schematic, new Symbols(style), choices.get(i)));
      looked += attempt.looked;
      if (best.isEmpty() || attempt.cost < best.get().cost) {
        best = Optional.of(attempt);
      }
      if (attempt.faults.isEmpty()) {
        boolean plain = choices.get(i).lines() == choices.get(0).lines();
        sound += plain && Score.crossings(attempt.drawing) == 0 ? ENOUGH : 1;
      }
    }
    return answer(best.orElseThrow());
  }

  /** Where a supply has two sides its rails are symbols, as books have them. */
  private static List<Choice> choices(Schematic schematic) {
    return Placer.twoSided(schematic)
        ? CHOICES.stream().filter(choice -> !choice.lines()).toList()
        : CHOICES;
  }

  private static Drawn answer(Attempt best) {
    if (best.faults.isEmpty()) {
      return new Drawn.Done(best.drawing);
    }
    Why why = why(best.faults);
    List<Fault> about = best.faults.stream().filter(fault -> why(fault) == why).toList();
    return new Undrawable(
        why,
        about.stream().flatMap(fault -> fault.parts().stream()).distinct().toList(),
        about.stream().flatMap(fault -> fault.nets().stream()).distinct().toList());
  }

  private static Why why(List<Fault> faults) {
    return faults.stream().map(SchematicDrawing::why).min(Why::compareTo).orElseThrow();
  }

  private static Why why(Fault fault) {
    return switch (fault.law()) {
      case "bodies-meet", "lead-on-body", "leads-meet" -> Why.OVERLAP;
      case "no-way" -> Why.NO_WAY;
      case "no-room" -> Why.NO_ROOM;
      default -> Why.UNCLEAN;
    };
  }

  private static Attempt attempt(Schematic schematic, SymbolStyle style, Layout layout) {
    Wiring wiring = Wiring.of(layout);
    var figures = new ArrayList<Figure>();
    var texts = new ArrayList<Text>(wiring.texts());
    for (Piece piece : layout.pieces()) {
      figures.add(figure(piece, layout, schematic));
      texts.addAll(Inside.texts(piece.form(), piece.turn(), piece.at(), piece.part().ref()));
    }
    var labels = new Labels(figures, wiring.wires(), wiring.dots(), wiring.marks(), texts);
    Map<End, Mark> open = rings(figures, schematic, labels);
    for (int i = 0; i < figures.size(); i++) {
      Piece piece = layout.pieces().get(i);
      String unit = piece.unit() == 0 ? "" : piece.unit() == 1 ? "A" : "B";
      labels.name(figures.get(i), piece.part().ref() + unit, PartValue.of(piece.part()));
    }
    open.forEach((end, mark) -> labels.name(mark, end));
    var marks = new ArrayList<>(wiring.marks());
    marks.addAll(open.values());
    texts.addAll(labels.texts());
    var raw =
        new Drawing(
            style, new Area(0, 0, 0, 0), figures, wiring.wires(), wiring.dots(), marks, texts);
    Drawing drawing = Framing.framed(raw, MARGIN);
    var faults = new ArrayList<Fault>();
    for (String net : wiring.failed()) {
      faults.add(new Fault("no-way", on(schematic, net), List.of(net)));
    }
    labels.homeless().forEach(ref -> faults.add(new Fault("no-room", List.of(ref), List.of())));
    faults.addAll(Check.faults(schematic, drawing));
    return new Attempt(
        drawing, faults, Score.of(drawing) + 1000.0 * faults.size(), wiring.looked());
  }

  /** By the leads beyond which they stand. */
  private static Map<End, Mark> rings(List<Figure> figures, Schematic schematic, Labels labels) {
    Map<End, Mark> rings = new LinkedHashMap<>();
    for (Figure figure : figures) {
      for (End end : figure.ends()) {
        if (open(end, schematic)) {
          labels.ring(figure, MarkForms.terminal(end), end).ifPresent(mark -> rings.put(end, mark));
        }
      }
    }
    return rings;
  }

  private static boolean open(End end, Schematic schematic) {
    return !end.net().isEmpty() && schematic.lone(end.pin()).isPresent();
  }

  private static Figure figure(Piece piece, Layout layout, Schematic schematic) {
    var nets = new ArrayList<String>();
    for (int port = 0; port < piece.ports(); port++) {
      nets.add(
          piece.net(port) < 0
              ? schematic.lone(piece.pin(port)).orElse("")
              : layout.nets().name(piece.net(port)));
    }
    return piece.form().figure(piece.part(), piece.unit(), piece.at(), piece.turn(), nets);
  }

  private static List<String> on(Schematic schematic, String name) {
    return schematic.nets().stream()
        .filter(net -> net.name().equals(name))
        .flatMap(net -> net.pins().stream())
        .map(Pin::ref)
        .distinct()
        .toList();
  }
}
