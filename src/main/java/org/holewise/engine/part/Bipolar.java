package org.holewise.engine.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A bipolar transistor, NPN or PNP. IS 10 fA, gain 200, reverse gain 4 and the spreads are the
 * project's law; with them a BC547B has 0.67 V from base to emitter at 2 mA, inside its sheet's
 * 0.58–0.70 V.
 */
record Bipolar(String name, int sign) implements Kind {
  static final Kind NPN = new Bipolar("npn", 1);
  static final Kind PNP = new Bipolar("pnp", -1);

  /** Starts of type numbers and the collector current of their data sheets (A). */
  private record Rated(String start, double amps) {}

  private static final List<Rated> RATED =
      List.of(
          new Rated("2N390", 0.2),
          new Rated("2N222", 0.6),
          new Rated("2N290", 0.6),
          new Rated("BC54", 0.1),
          new Rated("BC55", 0.1));

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "Maker's type number; sets the current it is cautioned for."),
        Field.Number.fallback(
            "gain", Unit.COUNT, 1, 1e9, 200, "Collector current over base current."),
        Field.Number.fallback(
            "spread", Unit.FRACTION, 0, 2, 0.35, "Standard deviation of the gain's logarithm."),
        Field.Number.fallback(
            "reverseGain", Unit.COUNT, 0.01, 1e9, 4, "The gain with collector and emitter turned."),
        Field.Number.fallback(
            "saturation", Unit.AMP, 1e-30, 1e-6, 10e-15, "Transport saturation current IS."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("c", "b", "e");
  }

  @Override
  public void connect(Part part, Network network) {
    double thermal = Constants.thermalVolts(network.celsius());
    network.device(
        new BipolarLaw(
            sign,
            thermal,
            part.number("saturation"),
            part.number("reverseGain"),
            gain(part),
            new Parameter(part.ref() + ".shift", 0, new Spread.Normal(DiodeType.SPREAD))),
        network.pin("c"),
        network.pin("b"),
        network.pin("e"));
  }

  private static Parameter gain(Part part) {
    return new Parameter(
        part.ref() + ".gain", part.number("gain"), new Spread.LogNormal(part.number("spread")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.InLine(3);
  }

  @Override
  public List<Limit> limits(Part part) {
    return rated(part).stream()
        .<Limit>map(rated -> new Limit.Current("c", rated.amps, rated.amps))
        .toList();
  }

  private static Optional<Rated> rated(Part part) {
    String type = part.fields().text("type").orElse("").strip().toUpperCase(Locale.ROOT);
    return RATED.stream().filter(rated -> type.startsWith(rated.start)).findFirst();
  }
}
