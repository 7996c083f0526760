package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/**
 * A film or ceramic capacitor, or an electrolytic one, whose ends differ. A tolerance is a limit,
 * 10 % and 20 % where none is given (the project's law). It leaks nothing.
 */
record Capacitor(String name, boolean polar, double tolerance) implements Kind {
  static final Capacitor PLAIN = new Capacitor("capacitor", false, 0.1);
  static final Capacitor ELECTROLYTIC = new Capacitor("electrolytic", true, 0.2);

  /** Voltage the wrong way round that an electrolytic bears without harm (V; common practice). */
  private static final double REVERSE = 0.5;

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("farads", Unit.FARAD, 1e-13, 1, "Capacitance."),
        Field.Number.fallback(
            "tolerance",
            Unit.FRACTION,
            0,
            0.9,
            tolerance,
            "Limit of the capacitance, uniform inside."),
        Field.Number.optional("rating", Unit.VOLT, 1, 1e5, "Voltage it may stand."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return polar ? List.of("+", "-") : List.of("1", "2");
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return polar ? List.of() : List.of(Map.of("1", "2", "2", "1"));
  }

  @Override
  public void connect(Part part, Network network) {
    List<String> pins = pins(part.fields());
    network.capacitor(
        network.pin(pins.get(0)),
        network.pin(pins.get(1)),
        Parameter.within(part.ref() + ".farads", part.number("farads"), part.number("tolerance")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(1, 8);
  }

  @Override
  public List<Limit> limits(Part part) {
    List<String> pins = pins(part.fields());
    List<Limit> rated =
        part.fields().number("rating").stream()
            .<Limit>mapToObj(volts -> new Limit.Volts(pins.get(0), pins.get(1), volts))
            .toList();
    return polar ? Limit.and(rated, new Limit.Polarity(pins.get(0), pins.get(1), REVERSE)) : rated;
  }
}
