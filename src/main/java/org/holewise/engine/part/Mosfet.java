package org.holewise.engine.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A MOSFET that is off without a gate voltage, of either channel. Threshold and k follow from the
 * type number where they are not given: 2N7000 and BS170 2.1 V and 0.13 A/V² (sheets: threshold 2.1
 * V, transconductance 320 mS at 200 mA), BS250 2 V and 0.03 A/V² (150 mS at 200 mA); anything else
 * 2 V and 0.1 A/V². A threshold may be given with either sign.
 */
record Mosfet(String name, int sign) implements Kind {
  static final Mosfet NMOS = new Mosfet("nmos", 1);
  static final Mosfet PMOS = new Mosfet("pmos", -1);

  /** What the sheets of a type say: threshold (V), k (A/V²), most current (A), gate (V). */
  private record Type(String start, double threshold, double k, double amps, double gate) {}

  private static final Type ANY = new Type("", 2, 0.1, 0, 20);

  private static final List<Type> TYPES =
      List.of(
          new Type("2N7000", 2.1, 0.13, 0.2, 20),
          new Type("BS170", 2.1, 0.13, 0.5, 20),
          new Type("BS250", 2, 0.03, 0.23, 20));

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "Maker's type number; sets what is not given otherwise."),
        Field.Number.optional(
            "threshold", Unit.VOLT, -50, 50, "Gate-source voltage at which it begins to conduct."),
        Field.Number.optional(
            "k", Unit.COUNT, 1e-9, 1e4, "In I = k·(V_GS − V_T)² when saturated (A/V²)."),
        Field.Number.fallback(
            "lambda", Unit.COUNT, 0, 1, 0, "Rise of that current with V_DS (1/V)."),
        Field.Number.fallback(
            "spread", Unit.VOLT, 0, 10, 0.4, "Standard deviation of the threshold."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("d", "g", "s");
  }

  @Override
  public void connect(Part part, Network network) {
    Type type = type(part).orElse(ANY);
    double threshold = Math.abs(part.fields().number("threshold", type.threshold()));
    network.device(
        new MosfetLaw(
            sign,
            part.fields().number("k", type.k()),
            part.number("lambda"),
            new Parameter(
                part.ref() + ".threshold", threshold, new Spread.Normal(part.number("spread")))),
        network.pin("d"),
        network.pin("g"),
        network.pin("s"));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.InLine(3);
  }

  @Override
  public List<Limit> limits(Part part) {
    Type type = type(part).orElse(ANY);
    List<Limit> gate = List.of(new Limit.Volts("g", "s", type.gate()));
    return type.amps() > 0
        ? Limit.and(gate, new Limit.Current("d", type.amps(), type.amps()))
        : gate;
  }

  private static Optional<Type> type(Part part) {
    String type = part.fields().text("type").orElse("").strip().toUpperCase(Locale.ROOT);
    return TYPES.stream().filter(known -> type.startsWith(known.start())).findFirst();
  }
}
