package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A bench supply of one output or several: exact voltages where no spread is given, each giving way
 * at its current limit where one is set. A single output may be said without {@code outputs}. Pins
 * are those that the outputs name; two outputs that name the same pin share it.
 */
final class Supply implements Kind {
  private static final int MOST_OUTPUTS = 4;

  @Override
  public String name() {
    return "supply";
  }

  @Override
  public List<Field> fields() {
    var fields = new ArrayList<Field>();
    fields.add(
        new Field.Rows("outputs", output(), MOST_OUTPUTS, "Its outputs, where not a single one."));
    fields.addAll(volts(false));
    return List.copyOf(fields);
  }

  private static List<Field> output() {
    var fields = new ArrayList<Field>();
    fields.add(new Field.Text("plus", "Name of its plus pin; + (then +2, +3, +4) if not given."));
    fields.add(new Field.Text("minus", "Name of its minus pin; - (then -2, -3, -4) if not given."));
    fields.addAll(volts(true));
    return List.copyOf(fields);
  }

  private static List<Field> volts(boolean required) {
    String meaning = "Voltage of the output.";
    return List.of(
        required
            ? Field.Number.required("volts", Unit.VOLT, 0, 1000, meaning)
            : Field.Number.optional("volts", Unit.VOLT, 0, 1000, meaning),
        Field.Number.optional("limit", Unit.AMP, 1e-6, 100, "Current at which it gives way."),
        Field.Number.fallback(
            "spread", Unit.FRACTION, 0, 1, 0, "Standard deviation as a share of the voltage."));
  }

  private record Output(
      String plus, String minus, double volts, OptionalDouble limit, double spread) {}

  private static List<Output> outputs(Fields fields) {
    List<Fields> rows = fields.rows("outputs");
    if (rows.isEmpty()) {
      return List.of(output(fields, ""));
    }
    var outputs = new ArrayList<Output>();
    for (int k = 0; k < rows.size(); k++) {
      outputs.add(output(rows.get(k), k == 0 ? "" : Integer.toString(k + 1)));
    }
    return outputs;
  }

  private static Output output(Fields row, String number) {
    return new Output(
        row.text("plus").orElse("+" + number),
        row.text("minus").orElse("-" + number),
        row.number("volts", 0),
        row.number("limit"),
        row.number("spread", 0));
  }

  @Override
  public List<String> pins(Fields fields) {
    var pins = new LinkedHashSet<String>();
    for (Output output : outputs(fields)) {
      pins.add(output.plus);
      pins.add(output.minus);
    }
    return List.copyOf(pins);
  }

  @Override
  public boolean source() {
    return true;
  }

  @Override
  public List<Feed> feeds(Part part) {
    return outputs(part.fields()).stream()
        .map(output -> new Feed(output.plus, output.minus, output.volts))
        .toList();
  }

  @Override
  public Map<String, Object> scaled(Part part, double factor) {
    List<Fields> rows = part.fields().rows("outputs");
    return rows.isEmpty()
        ? Map.of("volts", scaled(part.fields(), factor))
        : Map.of(
            "outputs", rows.stream().map(row -> row.with("volts", scaled(row, factor))).toList());
  }

  private static double scaled(Fields row, double factor) {
    return factor * row.number("volts", 0);
  }

  @Override
  public void connect(Part part, Network network) {
    List<Output> outputs = outputs(part.fields());
    for (int k = 0; k < outputs.size(); k++) {
      Output output = outputs.get(k);
      String name = part.ref() + (k == 0 ? ".volts" : ".volts" + (k + 1));
      connect(output, volts(name, output), network);
    }
  }

  private static Parameter volts(String name, Output output) {
    return output.spread == 0
        ? Parameter.exact(name, output.volts)
        : new Parameter(
            name, output.volts, new Spread.Normal(Math.abs(output.volts) * output.spread));
  }

  private static void connect(Output output, Parameter volts, Network network) {
    int plus = network.pin(output.plus);
    int minus = network.pin(output.minus);
    if (output.limit.isPresent()) {
      network.source(plus, minus, volts, output.limit.getAsDouble());
    } else {
      network.source(plus, minus, volts);
    }
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Wires();
  }
}
