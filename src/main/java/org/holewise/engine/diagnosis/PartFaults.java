package org.holewise.engine.diagnosis;

import java.math.BigDecimal;
import java.math.MathContext;
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
import org.holewise.engine.quantity.Unit;

/** Parts that are not what the record says: another value, or the wrong way round. */
final class PartFaults {
  /** Decades a multiplier band is misread by, and how likely each is beside another. */
  private static final double[][] DECADES = {{10, 2}, {0.1, 2}, {100, 1}, {0.01, 1}};

  private static final MathContext DIGITS = new MathContext(12);

  /** A value that the kit holds is taken for another more often than a band is misread. */
  private static final double FROM_KIT = 3;

  /** Of a large kit the values nearest by ratio: those are the ones that are mistaken. */
  private static final int MOST_FROM_KIT = 8;

  /** What a kind's value is called and measured in; a thermistor's or a sensor's is looser. */
  private record Valued(String field, Unit unit) {}

  private static final Map<String, Valued> VALUED =
      Map.of(
          "resistor", new Valued("ohms", Unit.OHM),
          "potentiometer", new Valued("ohms", Unit.OHM),
          "capacitor", new Valued("farads", Unit.FARAD),
          "electrolytic", new Valued("farads", Unit.FARAD),
          "inductor", new Valued("henries", Unit.HENRY));

  private static final Set<String> TRANSISTORS = Set.of("npn", "pnp", "nmos", "pmos");

  private static final String POTENTIOMETER = "potentiometer";

  /** Other orders of three leads; first the one of a case turned round. */
  private static final int[][] ORDERS = {{2, 1, 0}, {1, 0, 2}, {0, 2, 1}, {1, 2, 0}, {2, 0, 1}};

  /** A wiper taken for an end. */
  private static final int[][] WIPER_ORDERS = {ORDERS[1], ORDERS[2]};

  /** How much likelier a case is turned round than its leads mixed otherwise. */
  private static final double TURNED = 3;

  private PartFaults() {}

  static List<Hypothesis> wrongValue(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      Valued valued = VALUED.get(part.kind().name());
      if (valued == null) {
        continue;
      }
      values(scene, part, valued.field())
          .forEach(
              (si, share) ->
                  all.add(
                      Hypothesis.of(
                              Family.WRONG_VALUE,
                              new Place.OfPart(part.ref()),
                              "wrong-value",
                              share,
                              holes(scene, part),
                              scene.record().changed(part.ref(), valued.field(), si))
                          .valued(si, valued.unit())));
    }
    return all;
  }

  /** Values the part may really have, with their shares. */
  private static Map<Double, Double> values(Scene scene, Part part, String field) {
    double value = scene.record().value(part.ref(), field);
    Map<Double, Double> values = new LinkedHashMap<>();
    kit(scene, part, field).stream()
        .filter(other -> other != value)
        .sorted(Comparator.comparingDouble(other -> Math.abs(StrictMath.log(other / value))))
        .limit(MOST_FROM_KIT)
        .forEach(other -> values.put(other, FROM_KIT));
    for (double[] decade : DECADES) {
      values.putIfAbsent(rounded(value * decade[0]), decade[1]);
    }
    if (part.kind().name().equals("resistor")) {
      backwards(value, part.number("tolerance"))
          .ifPresent(backwards -> values.putIfAbsent(backwards, 1.0));
    }
    values.keySet().removeIf(other -> Math.abs(other / value - 1) < 1e-6);
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
  private static double rounded(double value) {
    return new BigDecimal(value).round(DIGITS).doubleValue();
  }

  /** Values of all parts of one kind. */
  private static Set<Double> kit(Scene scene, Part like, String field) {
    Set<Double> values = new LinkedHashSet<>();
    for (Part part : scene.exercise().parts()) {
      if (part.kind() == like.kind()) {
        values.add(part.number(field));
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

  /**
   * Transistors whose leads are taken for one another, for makers differ in their order, and
   * potentiometers whose wiper is.
   */
  static List<Hypothesis> swappedPins(Scene scene) {
    var all = new ArrayList<Hypothesis>();
    for (Part part : scene.exercise().parts()) {
      List<Pin> pins = part.pins();
      for (int[] order : orders(part)) {
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

  private static int[][] orders(Part part) {
    String kind = part.kind().name();
    return TRANSISTORS.contains(kind)
        ? ORDERS
        : kind.equals(POTENTIOMETER) ? WIPER_ORDERS : new int[0][];
  }

  static List<Hole> holes(Scene scene, Part part) {
    var holes = new ArrayList<Hole>();
    for (Pin pin : part.pins()) {
      scene.layout().flatMap(layout -> layout.hole(pin)).ifPresent(holes::add);
    }
    return holes;
  }
}
