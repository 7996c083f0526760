package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.document.shape.FlagShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.NumberShape;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Problems;
import org.holewise.document.shape.QuantityShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Unit;

/**
 * The members of a reading that say what is measured, where and when. An exercise measures at pins;
 * what was asked for besides may be measured at holes too.
 */
record Measures(
    Member<List<Spotted<Probe>>> volts,
    Member<Pin> amps,
    Member<List<Spotted<Probe>>> ohms,
    Member<List<Spotted<Probe>>> joined,
    Member<List<Spotted<Probe>>> drop,
    Member<List<Spotted<Probe>>> acvolts,
    Member<List<Spotted<Probe>>> peak,
    List<Comparison> comparisons,
    Member<Pin> frequency,
    Member<Pin> level,
    Member<String> seen,
    Member<Boolean> alone) {

  static final Measures AT_PINS = at(Words.AT_PIN);
  static final Measures ANYWHERE = at(Words.ANYWHERE);

  static final Member<String> WHEN =
      Member.optional("when", TextShape.line(40), "Name of a condition; the first if left out.");
  static final Member<Object> HERTZ =
      Member.optional(
          "hertz",
          new QuantityShape(Unit.HERTZ, 1e-3, 1e9, List.of()),
          "What the generator is set to for it (Hz).");
  static final Member<Double> AFTER =
      Member.optional(
              "after",
              new NumberShape(0, 10_000, true),
              "How many pulses of the condition's clock come before it.")
          .otherwise(0);

  private static Measures at(TextShape<Probe> probe) {
    var points = new ListShape<>(probe, 2, 2, true);
    return new Measures(
        Member.optional("volts", points, "DC voltage between two points, red lead first (V)."),
        Member.optional("amps", Words.ITS_PIN, "DC current into a pin, meter in series (A)."),
        Member.optional("ohms", points, "Resistance between two points, supply off (Ω)."),
        Member.optional("joined", points, "Buzzer between two points, supply off: yes or no."),
        Member.optional("drop", points, "Diode test from anode to cathode, supply off (V)."),
        Member.optional("acvolts", points, "AC voltage between two points, rms (V)."),
        Member.optional("peak", points, "AC voltage between two points, peak to peak (V)."),
        Measure.COMPARED.stream().map(key -> Comparison.of(key, probe)).toList(),
        Member.optional("frequency", Words.ITS_PIN, "How often the signal at a pin repeats (Hz)."),
        Member.optional("level", Words.ITS_PIN, "Logic level at a pin: H or L."),
        Member.optional("seen", Words.REFERENCE, "What a lamp does, by eye: lit, dim or dark."),
        Member.optional("alone", new FlagShape(), "With ohms: the part is out of the board.")
            .beside("ohms")
            .otherwise(false));
  }

  /** One AC voltage compared to another. */
  private record Comparison(ComparedShape shape, Member<Values> member) {
    private static final Map<String, String> SAYS =
        Map.of(
            "ratio", "One AC voltage as a multiple of another.",
            "corner", "Where a ratio has fallen to 1/√2 of its greatest, −3 dB (Hz).",
            "resonance", "Where a ratio is greatest (Hz).",
            "quality", "Frequency of the greatest ratio over the distance of the corners (plain).");

    static Comparison of(String key, TextShape<Probe> probe) {
      var shape = new ComparedShape(key, probe);
      return new Comparison(shape, Member.optional(key, shape.whole, SAYS.getOrDefault(key, "")));
    }

    Optional<Measure> measure(Values values, Optional<Probe> ground) {
      Optional<Measure.Pair> of = values.get(shape.of).flatMap(points -> pair(points, ground));
      Optional<Measure.Pair> to = values.get(shape.to).flatMap(points -> pair(points, ground));
      return of.flatMap(
          one -> to.map(other -> Measure.compared(shape.key, one, other, shape.chosen(values))));
    }
  }

  /** All of them, {@link #WHEN} and what belongs to it included. */
  List<Member<?>> members() {
    var all = new ArrayList<Member<?>>(List.of(volts, amps, ohms, joined, drop, acvolts, peak));
    comparisons.forEach(comparison -> all.add(comparison.member()));
    all.addAll(List.of(frequency, level, seen, alone, WHEN, HERTZ, AFTER));
    return all;
  }

  private List<Member<List<Spotted<Probe>>>> pairs() {
    return List.of(volts, ohms, joined, drop, acvolts, peak);
  }

  private List<Member<Pin>> pins() {
    return List.of(amps, frequency, level);
  }

  /**
   * The measure of a reading; empty where none could be read.
   *
   * @param ground what a voltage of one point is measured against
   */
  Optional<Measure> measure(Values reading, Optional<Probe> ground) {
    return pairs().stream()
        .flatMap(member -> pair(reading, member, reading.get(alone, false)).stream())
        .findFirst()
        .or(() -> atALead(reading))
        .or(() -> comparison(reading, ground))
        .or(() -> reading.get(seen).map(Measure.Seen::new));
  }

  private static Optional<Measure> pair(
      Values reading, Member<List<Spotted<Probe>>> member, boolean out) {
    return reading
        .get(member)
        .filter(points -> points.size() == 2)
        .map(
            points ->
                Measure.between(member.name(), points.get(0).value(), points.get(1).value(), out));
  }

  private Optional<Measure> atALead(Values reading) {
    return pins().stream()
        .flatMap(member -> reading.get(member).map(pin -> Measure.at(member.name(), pin)).stream())
        .findFirst();
  }

  private Optional<Measure> comparison(Values reading, Optional<Probe> ground) {
    return comparisons.stream()
        .flatMap(
            one ->
                reading.get(one.member()).flatMap(values -> one.measure(values, ground)).stream())
        .findFirst();
  }

  private static Optional<Measure.Pair> pair(List<Spotted<Probe>> points, Optional<Probe> ground) {
    if (points.isEmpty()) {
      return Optional.empty();
    }
    Probe red = points.get(0).value();
    return points.size() == 2
        ? Optional.of(new Measure.Pair(red, points.get(1).value()))
        : ground.map(black -> new Measure.Pair(red, black));
  }

  /**
   * Voltages of a comparison that are said by one point alone, where there is nothing to hold it
   * to.
   */
  List<String> groundless(Values reading) {
    List<String> all = new ArrayList<>();
    for (Comparison comparison : comparisons) {
      for (Values values : reading.get(comparison.member()).stream().toList()) {
        for (var member : comparison.shape().ends()) {
          values
              .get(member)
              .filter(points -> points.size() == 1)
              .ifPresent(points -> all.add(values.at(member)));
        }
      }
    }
    return all;
  }

  /**
   * When a reading is taken.
   *
   * @param usual the condition where none is named
   */
  static Occasion occasion(Values reading, String usual) {
    var hertz = reading.get(HERTZ);
    return new Occasion(
        reading.get(WHEN, usual),
        reading.get(AFTER, 0.0).intValue(),
        hertz.isPresent() ? OptionalDouble.of((Double) hertz.get()) : OptionalDouble.empty());
  }

  /** Every point that a reading names, with where it names it. */
  List<Spotted<Probe>> probes(Values reading) {
    List<Spotted<Probe>> all = new ArrayList<>();
    pairs().forEach(member -> reading.get(member).ifPresent(all::addAll));
    for (Comparison comparison : comparisons) {
      for (Values values : reading.get(comparison.member()).stream().toList()) {
        comparison.shape().ends().forEach(end -> values.get(end).ifPresent(all::addAll));
      }
    }
    for (var member : pins()) {
      reading
          .get(member)
          .ifPresent(pin -> all.add(new Spotted<>(reading.at(member), Probe.at(pin))));
    }
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
