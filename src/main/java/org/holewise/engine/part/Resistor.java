package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/** A fixed resistor; a tolerance is a limit, uniform inside (5 % where none is given). */
final class Resistor implements Kind {

  @Override
  public String name() {
    return "resistor";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("ohms", Unit.OHM, 1e-3, 1e9, "Resistance."),
        Field.Number.fallback(
            "tolerance", Unit.FRACTION, 0, 0.5, 0.05, "Limit of the resistance, uniform inside."),
        Field.Number.fallback("rating", Unit.WATT, 1e-3, 1e3, 0.25, "Power it may turn to heat."));
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
    network.resistor(
        network.pin("1"),
        network.pin("2"),
        Parameter.within(part.ref() + ".ohms", part.number("ohms"), part.number("tolerance")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(2, 12);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Power(part.number("rating")));
  }
}
