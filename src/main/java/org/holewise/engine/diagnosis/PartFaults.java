package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.CodedResistor;
import org.holewise.engine.quantity.ColourCode;
import org.holewise.engine.quantity.ColourReading;
import org.holewise.engine.quantity.Series;

/** Parts that are not what the record says: another value, or the wrong way round. */
final class PartFaults {
  /** Decades a multiplier band is misread by, and how likely each is beside another. */
  private static final double[][] DECADES = {{10, 2}, {0.1, 2}, {100, 1}, {0.01, 1}};

  /** A value that the kit holds is taken for another more often than a band is misread. */
  private static final double FROM_KIT = 3;

  /** Of a large kit the values nearest by ratio: those are the ones that are mistaken. */
  private static final int MOST_FROM_KIT = 8;

  private static final List<String> TRANSISTORS = List.of("npn", "pnp");

  /** Other orders of three leads; first the one of a case turned round. */
  private static final int[][] ORDERS = {{2, 1, 0}, {1, 0, 2}, {0, 2, 1}, {1, 2, 0}, {2, 0, 1}};

  /** How much likelier a case is turned round than its leads mixed otherwise. */
  private static final double TURNED = 3;

  private PartFaults() {}

  static List<Hypothesis> wrongValue(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      if (!part.kind().name().equals("resistor")) {
        continue;
      }
      values(scene, part)
          .forEach(
              (ohms, share) ->
                  all.add(
                      Hypothesis.of(
                              Family.WRONG_VALUE,
                              new Place.OfPart(part.ref()),
                              "wrong-value",
                              share,
                              holes(scene, part),
                              scene.record().changed(part.ref(), "ohms", ohms))
                          .valued(ohms)));
    }
    return all;
  }

  /** Values the part may really have, with their shares. */
  private static Map<Double, Double> values(Scene scene, Part part) {
    double ohms = scene.record().value(part.ref(), "ohms");
    Map<Double, Double> values = new LinkedHashMap<>();
    kit(scene).stream()
        .filter(other -> other != ohms)
        .sorted(Comparator.comparingDouble(other -> Math.abs(StrictMath.log(other / ohms))))
        .limit(MOST_FROM_KIT)
        .forEach(other -> values.put(other, FROM_KIT));
    for (double[] decade : DECADES) {
      values.putIfAbsent(preferred(ohms * decade[0]), decade[1]);
    }
    backwards(ohms, part.number("tolerance"))
        .ifPresent(backwards -> values.putIfAbsent(backwards, 1.0));
    values.keySet().removeIf(value -> Math.abs(value / ohms - 1) < 1e-6);
    return values;
  }

  /** What four bands say when they are read from the wrong end. */
  private static Optional<Double> backwards(double ohms, double tolerance) {
    return ColourCode.bands(ohms, tolerance, 4)
        .map(ColourCode::reversed)
        .flatMap(ColourReading::resistor)
        .map(CodedResistor::ohms);
  }

  /** Puts right the last digit that a multiplication by ten spoils. */
  private static double preferred(double ohms) {
    double near = Series.E96.nearest(ohms);
    double round = Series.E24.nearest(ohms);
    return Math.abs(round / ohms - 1) < 1e-9
        ? round
        : Math.abs(near / ohms - 1) < 1e-9 ? near : ohms;
  }

  private static Set<Double> kit(Scene scene) {
    Set<Double> values = new LinkedHashSet<>();
    for (Part part : scene.exercise().parts()) {
      if (part.kind().name().equals("resistor")) {
        values.add(part.number("ohms"));
      }
    }
    return values;
  }

  static List<Hypothesis> reversed(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      if (!part.kind().polar()) {
        continue;
      }
      Pin one = part.pins().get(0);
      Pin other = part.pins().get(1);
      Map<Pin, Pin> round = new LinkedHashMap<>();
      round.put(one, other);
      round.put(other, one);
      all.add(
          Hypothesis.of(
              Family.REVERSED,
              new Place.OfPart(part.ref()),
              "reversed",
              1,
              holes(scene, part),
              scene.record().mistaken(round)));
    }
    return all;
  }

  /** Transistors whose leads are taken for one another: makers differ in their order. */
  static List<Hypothesis> swappedPins(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      List<Pin> pins = part.pins();
      if (!TRANSISTORS.contains(part.kind().name())) {
        continue;
      }
      for (int[] order : ORDERS) {
        Map<Pin, Pin> really = new LinkedHashMap<>();
        var how = new StringJoiner(" ");
        for (int i = 0; i < order.length; i++) {
          really.put(pins.get(i), pins.get(order[i]));
          how.add(pins.get(order[i]).name());
        }
        all.add(
            Hypothesis.of(
                    Family.PINS,
                    new Place.OfPart(part.ref()),
                    "swapped-pins",
                    order == ORDERS[0] ? TURNED : 1,
                    holes(scene, part),
                    scene.record().mistaken(really))
                .how(how.toString()));
      }
    }
    return all;
  }

  static List<Hole> holes(Scene scene, Part part) {
    var holes = new ArrayList<Hole>();
    for (Pin pin : part.pins()) {
      scene.layout().flatMap(layout -> layout.hole(pin)).ifPresent(holes::add);
    }
    return holes;
  }
}
