package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;

/**
 * Circuits at random, the same for the same number: up to 40 nets, parts of every kind between nets
 * drawn evenly, so that loops of sources, shorts, dead ends and floating islands all come up.
 */
final class RandomCircuits {
  /** What may be drawn; a kind that is named more often comes up more often. */
  static final List<String> ALL =
      List.of(
          "resistor",
          "resistor",
          "resistor",
          "resistor",
          "resistor",
          "resistor",
          "battery",
          "supply",
          "diode",
          "zener",
          "led",
          "npn",
          "pnp",
          "potentiometer",
          "switch",
          "button");

  static final List<String> LINEAR =
      List.of("resistor", "resistor", "resistor", "resistor", "battery", "supply", "switch");

  static final List<String> JUNCTIONS =
      List.of("resistor", "resistor", "resistor", "battery", "diode", "led", "zener");

  static final List<String> BIPOLAR =
      List.of("resistor", "resistor", "resistor", "battery", "diode", "led", "npn", "pnp");

  private final Random random;
  private final List<String> kinds;

  private RandomCircuits(long number, List<String> kinds) {
    random = new Random(number * 0x9E3779B97F4A7C15L + kinds.size());
    this.kinds = kinds;
  }

  /** The circuit of that number, the first part a source. */
  static Rows draw(long number, List<String> kinds) {
    return new RandomCircuits(number, kinds).draw();
  }

  private Rows draw() {
    int nets = 2 + random.nextInt(39);
    int parts = 2 + (int) (nets * (0.6 + 0.9 * random.nextDouble()));
    Rows rows = Rows.of("");
    add(rows, "A0", kinds.contains("supply") && random.nextBoolean() ? "supply" : "battery", nets);
    for (int k = 1; k < parts; k++) {
      add(rows, "P" + k, kinds.get(random.nextInt(kinds.size())), nets);
    }
    return rows;
  }

  private void add(Rows rows, String ref, String name, int nets) {
    Kind kind = Registry.kind(name).orElseThrow();
    var part = new Part(ref, kind, fields(name));
    List<String> on = new ArrayList<>();
    part.pins().forEach(pin -> on.add("n" + random.nextInt(nets)));
    if (on.size() == 2 && on.get(0).equals(on.get(1)) && random.nextInt(8) > 0) {
      on.set(1, "n" + random.nextInt(nets));
    }
    rows.add(part, on);
  }

  private Fields fields(String kind) {
    return switch (kind) {
      case "resistor" -> Fields.NONE.with("ohms", logUniform(1, 1e7));
      case "potentiometer" -> setting(Fields.NONE.with("ohms", logUniform(100, 1e6)));
      case "switch", "button" -> Fields.NONE.with("closed", random.nextBoolean());
      case "battery" ->
          Fields.NONE
              .with("volts", uniform(1.2, 12))
              .with("internal", random.nextInt(3) == 0 ? 0.0 : logUniform(0.05, 20));
      case "supply" -> limited(Fields.NONE.with("volts", uniform(1, 24)));
      case "zener" -> Fields.NONE.with("breakdown", Fields.NONE.with("volts", uniform(2.4, 15)));
      case "led" ->
          Fields.NONE.with("colour", List.of("red", "green", "blue").get(random.nextInt(3)));
      case "diode" -> Fields.NONE.with("type", random.nextBoolean() ? "1N4148" : "1N4001");
      case "npn", "pnp" -> Fields.NONE.with("gain", logUniform(20, 500));
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private Fields setting(Fields fields) {
    return fields.with("set", List.of(0.0, 1.0, random.nextDouble()).get(random.nextInt(3)));
  }

  private Fields limited(Fields fields) {
    return random.nextBoolean() ? fields.with("limit", logUniform(1e-3, 2)) : fields;
  }

  private double uniform(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double logUniform(double low, double high) {
    return low * Math.exp(random.nextDouble() * Math.log(high / low));
  }
}
