package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A signal generator: a wave about an offset behind its output resistance, 50 Ω where none is given
 * (common practice), set to 2 % where no spread is given. Of waves other than the sine, root mean
 * square and peak are right at the generator and through what only divides; what a circuit does to
 * their overtones is not followed.
 */
final class Generator implements Kind {

  @Override
  public String name() {
    return "generator";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("volts", Unit.VOLT, 0, 1000, "Peak of the wave, without load."),
        Field.Number.required("hertz", Unit.HERTZ, 1e-3, 1e9, "Frequency."),
        new Field.Choice("wave", Wave.keys(), Optional.of("sine"), "Shape of the wave."),
        Field.Number.fallback("offset", Unit.VOLT, -1000, 1000, 0, "Voltage it swings about."),
        Field.Number.fallback("output", Unit.OHM, 0, 1e6, 50, "Output resistance."),
        Field.Number.fallback(
            "spread", Unit.FRACTION, 0, 1, 0.02, "Standard deviation as a share of the peak."));
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
  public boolean swings() {
    return true;
  }

  @Override
  public Map<String, Object> scaled(Part part, double factor) {
    return Map.of(
        "volts", Math.abs(factor) * part.number("volts"),
        "offset", factor * part.number("offset"));
  }

  @Override
  public void connect(Part part, Network network) {
    double peak = part.number("volts");
    double output = part.number("output");
    int inside = output > 0 ? network.node() : network.pin("+");
    network.generator(
        inside,
        network.pin("-"),
        Parameter.exact(part.ref() + ".offset", part.number("offset")),
        new Parameter(part.ref() + ".volts", peak, new Spread.Normal(peak * part.number("spread"))),
        part.number("hertz"),
        Wave.of(part));
    if (output > 0) {
      network.resistor(inside, network.pin("+"), Parameter.exact(part.ref() + ".output", output));
    }
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Wires();
  }
}
