package org.holewise.engine.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.quantity.Unit;

/**
 * A light-emitting diode, by colour or by a point of its forward curve; red where neither is given.
 * Typical forward voltages at 20 mA of 5 mm lamps are from memory (red 2.0, standard green 2.2,
 * true green and blue 3.2 V) and lie in the ranges of Kuphaldt, Lessons in Electric Circuits,
 * Semiconductors 3 (red 1.5–2.4, orange 2.1–2.2, yellow and green 1.7–2.8, blue and white 3–4 V).
 * Ideality 2, series 3 Ω and a spread of 80 mV are the project's law.
 */
final class Led implements Kind {
  static final double AMPS = 0.02;
  private static final double SPREAD = 0.08;
  private static final double IDEALITY = 2;
  private static final double SERIES = 3;

  /** Reverse voltage of the usual 5 mm lamps' sheets (V). */
  private static final double REVERSE = 5;

  /** Absolute maximum over rated current: 30 mA for a lamp rated at 20 mA, as sheets have it. */
  static final double MAXIMUM = 1.5;

  private static final Map<String, Double> VOLTS = new LinkedHashMap<>();

  static {
    VOLTS.put("red", 2.0);
    VOLTS.put("orange", 2.1);
    VOLTS.put("yellow", 2.1);
    VOLTS.put("green", 2.2);
    VOLTS.put("true-green", 3.2);
    VOLTS.put("blue", 3.2);
    VOLTS.put("white", 3.2);
  }

  @Override
  public String name() {
    return "led";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Choice(
            "colour",
            List.copyOf(VOLTS.keySet()),
            Optional.of("red"),
            "Colour of its light; sets the forward voltage where none is given."),
        CurvePoint.group("forward", 10, "A point of the forward curve."),
        Field.Number.fallback(
            "limit", Unit.AMP, 1e-4, 10, AMPS, "Current above which it is cautioned."),
        Diode.IDEALITY,
        Diode.SERIES);
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("a", "k");
  }

  @Override
  public boolean polar() {
    return true;
  }

  @Override
  public void connect(Part part, Network network) {
    connect(part, network, network.pin("a"), network.pin("k"));
  }

  /** Stamps a lamp between two nodes, of the part's colour. */
  static void connect(Part part, Network network, int anode, int cathode) {
    double volts = VOLTS.getOrDefault(part.fields().text("colour").orElse("red"), 2.0);
    CurvePoint usual = new CurvePoint(volts, AMPS, SPREAD);
    Diode.connect(part, network, usual, IDEALITY, SERIES, anode, cathode);
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(1, 6);
  }

  @Override
  public List<Limit> limits(Part part) {
    double limit = part.number("limit");
    return List.of(
        new Limit.Current("a", limit, MAXIMUM * limit), new Limit.Reverse("a", "k", REVERSE));
  }
}
