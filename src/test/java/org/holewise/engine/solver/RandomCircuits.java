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

  static final List<String> ACTIVE =
      List.of(
          "resistor",
          "resistor",
          "resistor",
          "resistor",
          "resistor",
          "battery",
          "diode",
          "led",
          "npn",
          "capacitor",
          "inductor",
          "nmos",
          "pmos",
          "regulator",
          "dual-opamp",
          "comparator");

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

  /** As {@link #draw}, with a battery that chips and regulators hang on as they are meant to. */
  static Rows powered(long number) {
    return new RandomCircuits(number, ACTIVE).powered();
  }

  private Rows powered() {
    int nets = 4 + random.nextInt(21);
    int parts = 2 + (int) (nets * (0.6 + 0.9 * random.nextDouble()));
    Rows rows = Rows.of("");
    Fields battery = Fields.NONE.with("volts", uniform(5, 15)).with("internal", 1.0);
    rows.add(new Part("A0", Registry.kind("battery").orElseThrow(), battery), List.of("n1", "n0"));
    for (int k = 1; k < parts; k++) {
      String name = kinds.get(random.nextInt(kinds.size()));
      var part = new Part("P" + k, Registry.kind(name).orElseThrow(), fields(name));
      List<String> on = new ArrayList<>();
      part.pins().forEach(pin -> on.add(powered(name, pin.name(), nets)));
      rows.add(part, on);
    }
    return rows;
  }

  /** As {@link #powered}, the first part a generator, and nothing that is slow. */
  static Rows swinging(long number) {
    return swinging(
        number,
        ACTIVE.stream().filter(k -> !k.equals("capacitor") && !k.equals("inductor")).toList());
  }

  /** As {@link #powered}, the first part a generator. */
  static Rows storing(long number) {
    return swinging(number, ACTIVE);
  }

  private static Rows swinging(long number, List<String> kinds) {
    Rows rows = new RandomCircuits(number, kinds).powered();
    var generator = Registry.kind("generator").orElseThrow();
    Fields fields = Fields.NONE.with("volts", 1.0).with("hertz", 1000.0).with("offset", 1.0);
    Rows swinging = Rows.of("").add(new Part("A1", generator, fields), List.of("n2", "n0"));
    return swinging.add(rows);
  }

  private String powered(String kind, String pin, int nets) {
    return switch (kind + " " + pin) {
      case "dual-opamp 8", "comparator 8", "regulator in" -> "n1";
      case "dual-opamp 4", "comparator 4", "regulator gnd" -> "n0";
      default -> "n" + random.nextInt(nets);
    };
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
      case "nmos", "pmos" ->
          Fields.NONE.with("threshold", uniform(0.8, 3)).with("k", logUniform(1e-3, 1));
      case "regulator" -> Fields.NONE.with("volts", List.of(3.3, 5.0, 12.0).get(random.nextInt(3)));
      case "dual-opamp" ->
          Fields.NONE
              .with("type", List.of("LM358", "TL072", "generic").get(random.nextInt(3)))
              .with("offset", uniform(-2e-3, 2e-3));
      case "comparator" -> Fields.NONE;
      case "capacitor" -> Fields.NONE.with("farads", logUniform(1e-10, 1e-3));
      case "inductor" -> Fields.NONE.with("henries", logUniform(1e-5, 1));
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
