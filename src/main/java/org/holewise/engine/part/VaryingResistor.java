package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/**
 * A resistance that a condition sets. In light: 50 % either way where no tolerance is given, for
 * the material scatters that much (the project's law). At a temperature: 10 %, as suppliers print
 * it (common practice).
 *
 * @param least smallest resistance (Ω)
 * @param tolerance where none is given
 * @param says what its resistance is
 */
record VaryingResistor(String name, double least, double tolerance, String says) implements Kind {

  static final Kind PHOTORESISTOR =
      new VaryingResistor("photoresistor", 1, 0.5, "Resistance in the light of the condition.");
  static final Kind THERMISTOR =
      new VaryingResistor(
          "thermistor", 1e-3, 0.1, "Resistance at the temperature of the condition.");

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("ohms", Unit.OHM, least, 1e9, says),
        Field.Number.fallback(
            "tolerance",
            Unit.FRACTION,
            0,
            0.9,
            tolerance,
            "Limit of the resistance, uniform inside."),
        Field.Number.fallback("rating", Unit.WATT, 1e-3, 1e3, 0.1, "Power it may turn to heat."));
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
    return new Footprint.Leads(1, 8);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Power(part.number("rating")));
  }
}
