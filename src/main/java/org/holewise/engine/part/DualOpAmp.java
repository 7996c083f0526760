package org.holewise.engine.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * Two op-amps in a package of eight pins, as LM358 and TL072: out, −, + on 1, 2, 3 and 7, 6, 5,
 * bottom supply on 4, top supply on 8. LM358 where no type is given: gain 100,000 (sheet, typical),
 * headroom 1.4 V and 20 mV; TL072 200,000, 1 V and 1 V (swing about ±14 V at ±15 V); generic
 * 100,000 and none. Supply at most 32 V and 36 V (sheets).
 */
final class DualOpAmp implements Kind {
  /** What the sheets of a type say. */
  private record Type(String name, double gain, double top, double bottom, double supply) {}

  private static final List<Type> TYPES =
      List.of(
          new Type("LM358", 1e5, 1.4, 0.02, 32),
          new Type("TL072", 2e5, 1, 1, 36),
          new Type("GENERIC", 1e5, 0, 0, 36));

  /** Pins of a half: out, +, −. */
  static final List<List<String>> HALVES = List.of(List.of("1", "3", "2"), List.of("7", "5", "6"));

  static final List<String> PINS = List.of("1", "2", "3", "4", "5", "6", "7", "8");

  /** From each input to the bottom pin (Ω). */
  static final double INPUT = 1e9;

  @Override
  public String name() {
    return "dual-opamp";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "LM358, TL072 or generic; LM358 where not given or unknown."),
        Field.Number.optional(
            "gain", Unit.COUNT, 1, 1e7, "Gain of a small difference, without feedback."),
        new Field.Group(
            "headroom",
            List.of(
                Field.Number.optional("top", Unit.VOLT, 0, 20, "How near it comes to pin 8."),
                Field.Number.optional("bottom", Unit.VOLT, 0, 20, "How near it comes to pin 4.")),
            false,
            "How near its output comes to its supply pins."),
        Field.Number.fallback(
            "offset", Unit.VOLT, -1, 1, 0, "Voltage at its + input that is not there."),
        Field.Number.fallback("spread", Unit.VOLT, 0, 1, 2e-3, "Standard deviation of the offset."),
        Field.Number.optional(
            "bandwidth", Unit.HERTZ, 1, 1e10, "Where its gain is one; without end if not given."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return PINS;
  }

  @Override
  public void connect(Part part, Network network) {
    Type type = type(part);
    double gain = part.fields().number("gain", type.gain());
    Fields headroom = part.fields().group("headroom");
    network.number(input(part));
    network.number(offset(part, 0));
    network.number(offset(part, 1));
    pole(part, gain).ifPresent(network::number);
    for (int half = 0; half < HALVES.size(); half++) {
      List<String> pins = HALVES.get(half);
      if (network.used(pins)) {
        var law =
            new OpAmpLaw(
                gain,
                headroom.number("top", type.top()),
                headroom.number("bottom", type.bottom()),
                offset(part, half));
        connect(part, network, law, pins);
      }
    }
  }

  private static void connect(Part part, Network network, OpAmpLaw law, List<String> pins) {
    int out = network.pin(pins.get(0));
    int plus = network.pin(pins.get(1));
    int minus = network.pin(pins.get(2));
    int top = network.pin("8");
    int bottom = network.pin("4");
    network.resistor(plus, bottom, input(part));
    network.resistor(minus, bottom, input(part));
    Optional<Parameter> pole = pole(part, law.gain());
    if (pole.isEmpty()) {
      network.device(law, out, plus, minus, top, bottom);
      return;
    }
    int slow = network.node();
    network.device(new DifferenceLaw(), slow, plus, minus, bottom);
    network.capacitor(slow, bottom, pole.get());
    network.device(law, out, slow, bottom, top, bottom);
  }

  private static Parameter input(Part part) {
    return Parameter.exact(part.ref() + ".input", INPUT);
  }

  private static Parameter offset(Part part, int half) {
    return new Parameter(
        part.ref() + ".offset" + (half + 1),
        part.number("offset"),
        new Spread.Normal(part.number("spread")));
  }

  /** The capacitance inside that makes its bandwidth; empty where it is without end. */
  private static Optional<Parameter> pole(Part part, double gain) {
    return part.fields().number("bandwidth").stream()
        .mapToObj(hertz -> DifferenceLaw.SIEMENS * gain / (2 * Math.PI * hertz))
        .map(farads -> Parameter.exact(part.ref() + ".pole", farads))
        .findFirst();
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Dip(8);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Supply("8", "4", type(part).supply()));
  }

  private static Type type(Part part) {
    String name = part.fields().text("type").orElse("").strip().toUpperCase(Locale.ROOT);
    return TYPES.stream()
        .filter(type -> name.startsWith(type.name()))
        .findFirst()
        .orElse(TYPES.get(0));
  }
}
