package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.FlagShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Measure.Amps;
import org.holewise.engine.exercise.Measure.Joined;
import org.holewise.engine.exercise.Measure.Ohms;
import org.holewise.engine.exercise.Measure.Seen;
import org.holewise.engine.exercise.Measure.Volts;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;

/**
 * The members of a reading that say what is measured and where. An exercise measures at pins; what
 * was asked for besides may be measured at holes too.
 */
record Measures(
    Member<List<Spotted<Probe>>> volts,
    Member<Pin> amps,
    Member<List<Spotted<Probe>>> ohms,
    Member<List<Spotted<Probe>>> joined,
    Member<String> seen,
    Member<Boolean> alone) {

  /** Kinds of readings, in the order of the format. */
  static final List<String> KINDS = List.of("volts", "amps", "ohms", "joined", "seen");

  /** What the format knows and this engine does not measure yet. */
  static final List<String> LATER =
      List.of("drop", "acvolts", "peak", "ratio", "frequency", "level", "after");

  static final Measures AT_PINS = at(Words.AT_PIN);
  static final Measures ANYWHERE = at(Words.ANYWHERE);

  private static Measures at(TextShape<Probe> probe) {
    var points = new ListShape<>(probe, 2, 2, true);
    return new Measures(
        Member.optional("volts", points, "DC voltage between two points, red lead first (V)."),
        Member.optional("amps", Words.ITS_PIN, "DC current into a pin, meter in series (A)."),
        Member.optional("ohms", points, "Resistance between two points, supply off (Ω)."),
        Member.optional("joined", points, "Buzzer between two points, supply off: yes or no."),
        Member.optional("seen", Words.REFERENCE, "What a lamp does, by eye: lit, dim or dark."),
        Member.optional("alone", new FlagShape(), "With ohms: the part is out of the board.")
            .beside("ohms")
            .otherwise(false));
  }

  List<Member<?>> members() {
    return List.of(volts, amps, ohms, joined, seen, alone);
  }

  /** The measure of a reading; empty where none could be read. */
  Optional<Measure> measure(Values reading) {
    boolean out = reading.get(alone, false);
    return Optional.<Measure>empty()
        .or(() -> pair(reading, volts).map(p -> new Volts(p.get(0), p.get(1))))
        .or(() -> reading.get(amps).map(Amps::new))
        .or(() -> pair(reading, ohms).map(p -> new Ohms(p.get(0), p.get(1), out)))
        .or(() -> pair(reading, joined).map(p -> new Joined(p.get(0), p.get(1))))
        .or(() -> reading.get(seen).map(Seen::new));
  }

  private static Optional<List<Probe>> pair(Values reading, Member<List<Spotted<Probe>>> member) {
    return reading
        .get(member)
        .filter(points -> points.size() == 2)
        .map(points -> points.stream().map(Spotted::value).toList());
  }

  /** Every point that a reading names, with where it names it. */
  List<Spotted<Probe>> probes(Values reading) {
    List<Spotted<Probe>> all = new ArrayList<>();
    for (var member : List.of(volts, ohms, joined)) {
      reading.get(member).ifPresent(all::addAll);
    }
    reading.get(amps).ifPresent(pin -> all.add(new Spotted<>(reading.at(amps), Probe.at(pin))));
    return all;
  }

  /** Says so where {@code alone} stands between the leads of two parts. */
  void checkAlone(Values reading, Problems problems) {
    boolean twoParts =
        reading.get(ohms).stream()
                .flatMap(List::stream)
                .filter(point -> point.value() instanceof Probe.AtPin)
                .map(point -> ((Probe.AtPin) point.value()).pin().ref())
                .distinct()
                .count()
            > 1;
    if (reading.get(alone, false) && twoParts) {
      problems.add(Problem.of(reading.at(alone), "alone-two-parts"));
    }
  }
}
