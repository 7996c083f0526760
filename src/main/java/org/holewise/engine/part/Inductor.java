package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/**
 * An inductor with the resistance of its wire, 1 mΩ where none is given or none at all, so that two
 * side by side share their current. A tolerance is a limit, 10 % where none is given (common
 * practice).
 */
final class Inductor implements Kind {
  private static final double LEAST_OHMS = 1e-3;

  @Override
  public String name() {
    return "inductor";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("henries", Unit.HENRY, 1e-9, 1e3, "Inductance."),
        Field.Number.fallback(
            "series", Unit.OHM, 0, 1e5, LEAST_OHMS, "Resistance of its wire; 1 mΩ at least."),
        Field.Number.fallback(
            "tolerance", Unit.FRACTION, 0, 0.9, 0.1, "Limit of the inductance, uniform inside."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("1", "2");
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return List.of(Map.of("1", "2", "2", "1"));
  }

  @Override
  public void connect(Part part, Network network) {
    int inside = network.node();
    double ohms = Math.max(part.number("series"), LEAST_OHMS);
    network.resistor(network.pin("1"), inside, Parameter.exact(part.ref() + ".series", ohms));
    network.inductor(
        inside,
        network.pin("2"),
        Parameter.within(
            part.ref() + ".henries", part.number("henries"), part.number("tolerance")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(2, 12);
  }
}
