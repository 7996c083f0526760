package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A potentiometer, pins 1, wiper, 2. Setting 0 has the wiper at 1; {@code unknown} is uniform over
 * the whole track about its middle, and so is a setting that is not given. A wiper at an end is one
 * piece of metal with it. A tolerance is a limit, 20 % where none is given, as suppliers print it
 * (common practice).
 */
final class Potentiometer implements Kind {

  @Override
  public String name() {
    return "potentiometer";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("ohms", Unit.OHM, 1, 1e8, "Resistance from end to end."),
        new Field.Number(
            "set",
            Unit.FRACTION,
            0,
            1,
            OptionalDouble.empty(),
            false,
            List.of("unknown"),
            "Share of the track between 1 and the wiper; unknown where not given."),
        Field.Number.fallback(
            "tolerance", Unit.FRACTION, 0, 0.5, 0.2, "Limit of the resistance, uniform inside."),
        Field.Number.fallback("rating", Unit.WATT, 1e-3, 1e3, 0.25, "Power it may turn to heat."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("1", "w", "2");
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return fields.number("set", 0.5) == 0.5
        ? List.of(Map.of("1", "2", "w", "w", "2", "1"))
        : List.of();
  }

  @Override
  public void connect(Part part, Network network) {
    int one = network.pin("1");
    int wiper = network.pin("w");
    int two = network.pin("2");
    Parameter ohms =
        Parameter.within(part.ref() + ".ohms", part.number("ohms"), part.number("tolerance"));
    Parameter set = set(part);
    if (ohms.nominal() * set.nominal() < WiperLaw.LEAST_OHMS) {
      network.join(one, wiper);
      network.resistor(wiper, two, ohms);
    } else if (ohms.nominal() * (1 - set.nominal()) < WiperLaw.LEAST_OHMS) {
      network.join(wiper, two);
      network.resistor(one, wiper, ohms);
    } else {
      network.device(new WiperLaw(ohms, set), one, wiper, two);
    }
  }

  private static Parameter set(Part part) {
    String name = part.ref() + ".set";
    return part.fields().number("set").isPresent()
        ? Parameter.exact(name, part.fields().number("set", 0))
        : new Parameter(name, 0.5, new Spread.Limit(0.5));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.InLine(3);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Power(part.number("rating")));
  }
}
