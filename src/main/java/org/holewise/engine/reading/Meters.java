package org.holewise.engine.reading;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The meter models that ship with the engine; each is a data file beside this class. */
public final class Meters {
  private static final List<String> NAMES = List.of("hand-2000");
  private static final List<Meter> MODELS = NAMES.stream().map(Meters::load).toList();

  private Meters() {}

  public static List<String> names() {
    return NAMES;
  }

  public static Optional<Meter> named(String name) {
    return MODELS.stream().filter(meter -> meter.name().equals(name)).findFirst();
  }

  private static Meter load(String name) {
    var file = new Properties();
    try (var in = Meters.class.getResourceAsStream(name + ".properties")) {
      if (in == null) {
        throw new IllegalStateException("no meter model " + name);
      }
      file.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<Function, Meter.Scale> scales = new EnumMap<>(Function.class);
    for (Function function : Function.values()) {
      scales.put(function, scale(file, function.key()));
    }
    return new Meter(
        name,
        scales,
        numbers(file, "ohms.volts")[0],
        numbers(file, "buzzer.below")[0],
        new Meter.DiodeTest(numbers(file, "drop.amps")[0], numbers(file, "drop.limit")[0]));
  }

  private static Meter.Scale scale(Properties file, String function) {
    double[] full = numbers(file, function + ".ranges");
    double[] ohms = file.containsKey(function + ".ohms") ? numbers(file, function + ".ohms") : full;
    var ranges = new ArrayList<Meter.Range>();
    for (int i = 0; i < full.length; i++) {
      ranges.add(new Meter.Range(full[i], ohms[Math.min(i, ohms.length - 1)]));
    }
    return new Meter.Scale(
        ranges,
        numbers(file, function + ".gain")[0],
        numbers(file, function + ".digits")[0],
        numbers(file, file.containsKey(function + ".counts") ? function + ".counts" : "counts")[0]);
  }

  private static double[] numbers(Properties file, String key) {
    String text = file.getProperty(key);
    if (text == null) {
      throw new IllegalStateException("meter model lacks " + key);
    }
    String[] words = text.strip().split(" +", -1);
    double[] numbers = new double[words.length];
    for (int i = 0; i < words.length; i++) {
      numbers[i] = Double.parseDouble(words[i]);
    }
    return numbers;
  }
}
