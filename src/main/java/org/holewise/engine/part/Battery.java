package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/** A battery: a voltage behind its internal resistance, none where none is given. */
final class Battery implements Kind {

  @Override
  public String name() {
    return "battery";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("volts", Unit.VOLT, 0, 1000, "Voltage without load."),
        Field.Number.fallback("internal", Unit.OHM, 0, 1e6, 0, "Internal resistance."),
        Field.Number.fallback(
            "spread", Unit.FRACTION, 0, 1, 0.05, "Standard deviation as a share of the voltage."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("+", "-");
  }

  @Override
  public boolean source() {
    return true;
  }

  @Override
  public Map<String, Object> scaled(Part part, double factor) {
    return Map.of("volts", factor * part.number("volts"));
  }

  @Override
  public void connect(Part part, Network network) {
    double volts = part.number("volts");
    var parameter =
        new Parameter(
            part.ref() + ".volts",
            volts,
            new Spread.Normal(Math.abs(volts) * part.number("spread")));
    double internal = part.number("internal");
    if (internal == 0) {
      network.source(network.pin("+"), network.pin("-"), parameter);
    } else {
      int inside = network.node();
      network.source(inside, network.pin("-"), parameter);
      network.resistor(
          inside, network.pin("+"), Parameter.exact(part.ref() + ".internal", internal));
    }
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Wires();
  }
}
