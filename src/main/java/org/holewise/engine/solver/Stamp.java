package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Device;
import org.holewise.engine.part.Driver;
import org.holewise.engine.part.Logic;
import org.holewise.engine.part.Network;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Wave;
import org.holewise.engine.quantity.Parameter;

/**
 * The law of one part, written down once: its elements between spots of its own. Spots are its pins
 * in order, then its inner nodes. Not changed once the part has connected itself.
 */
final class Stamp implements Network {

  /** One piece of metal. */
  record Join(int a, int b) {}

  /** A resistance whose value is one of the part's parameters. */
  record Resistance(int a, int b, int parameter) {}

  /** A source of voltage; an infinite limit is none. */
  record Source(int plus, int minus, int parameter, double limit, Optional<Swing> swing) {}

  /** How a generator's voltage swings; {@code peak} is one of the part's parameters. */
  record Swing(int peak, double hertz, Wave wave) {}

  record Inductor(int a, int b, int parameter) {}

  record Capacitor(int a, int b, int parameter) {}

  /** A device between spots, with where its parameters stand among the part's. */
  record Law(Device device, int[] spots, int[] parameters) {}

  /** An output of a part's logic: the law of its pin when high, and when low. */
  record Output(int pin, Law high, Law low) {}

  /** The logic of a part between two supply spots. */
  record Gates(Logic logic, int plus, int minus, int[] inputs, List<Output> outputs) {}

  final List<Join> joins = new ArrayList<>();
  final List<Resistance> resistances = new ArrayList<>();
  final List<Source> sources = new ArrayList<>();
  final List<Capacitor> capacitors = new ArrayList<>();
  final List<Inductor> inductors = new ArrayList<>();
  final List<Law> laws = new ArrayList<>();
  final List<Gates> gates = new ArrayList<>();
  final List<Parameter> parameters = new ArrayList<>();

  /** What it was told of its pins, on which its elements may depend. */
  private record Told(List<String> pins, boolean used) {}

  private final List<Told> told = new ArrayList<>();
  private final List<String> pins;
  private final double celsius;
  private final Predicate<String> joined;
  private int spots;

  private Stamp(List<String> pins, double celsius, Predicate<String> joined) {
    this.pins = pins;
    this.celsius = celsius;
    this.joined = joined;
    this.spots = pins.size();
  }

  /**
   * The law of a part.
   *
   * @param netlist tells which of its pins are on a net with others
   */
  static Stamp of(Part part, double celsius, Netlist netlist) {
    var stamp = new Stamp(part.kind().pins(part.fields()), celsius, joined(part, netlist));
    part.kind().connect(part, stamp);
    return stamp;
  }

  private static Predicate<String> joined(Part part, Netlist netlist) {
    return pin -> netlist.nets().get(netlist.net(part.pin(pin))).pins().size() > 1;
  }

  /** Whether the part would write the same on other nets. */
  boolean holds(Part part, Netlist netlist) {
    Predicate<String> there = joined(part, netlist);
    return told.stream().allMatch(one -> one.pins().stream().anyMatch(there) == one.used());
  }

  /** A part taken out: pins and nothing between them. */
  Stamp withoutLaw() {
    return new Stamp(pins, celsius, joined);
  }

  boolean linear() {
    return laws.isEmpty()
        && gates.isEmpty()
        && sources.stream().allMatch(source -> Double.isInfinite(source.limit()));
  }

  /** Nodes inside the part. */
  int inner() {
    return spots - pins.size();
  }

  @Override
  public int pin(String name) {
    int index = pins.indexOf(name);
    if (index < 0) {
      throw new IllegalArgumentException("no such pin: " + name);
    }
    return index;
  }

  @Override
  public boolean used(List<String> some) {
    boolean used = some.stream().anyMatch(joined);
    told.add(new Told(List.copyOf(some), used));
    return used;
  }

  @Override
  public int node() {
    return spots++;
  }

  @Override
  public double celsius() {
    return celsius;
  }

  @Override
  public void number(Parameter number) {
    parameter(number);
  }

  @Override
  public void join(int a, int b) {
    joins.add(new Join(a, b));
  }

  @Override
  public void resistor(int a, int b, Parameter ohms) {
    resistances.add(new Resistance(a, b, parameter(ohms)));
  }

  @Override
  public void source(int plus, int minus, Parameter volts) {
    source(plus, minus, volts, Double.POSITIVE_INFINITY);
  }

  @Override
  public void source(int plus, int minus, Parameter volts, double limit) {
    sources.add(new Source(plus, minus, parameter(volts), limit, Optional.empty()));
  }

  @Override
  public void generator(
      int plus, int minus, Parameter offset, Parameter peak, double hertz, Wave wave) {
    var swing = new Swing(parameter(peak), hertz, wave);
    sources.add(
        new Source(plus, minus, parameter(offset), Double.POSITIVE_INFINITY, Optional.of(swing)));
  }

  @Override
  public void inductor(int a, int b, Parameter henries) {
    inductors.add(new Inductor(a, b, parameter(henries)));
  }

  @Override
  public void capacitor(int a, int b, Parameter farads) {
    capacitors.add(new Capacitor(a, b, parameter(farads)));
  }

  @Override
  public void device(Device device, int... nodes) {
    laws.add(law(device, nodes));
  }

  @Override
  public void logic(Logic logic, int plus, int minus, int[] inputs, Driver... outputs) {
    var own = new ArrayList<Output>();
    for (Driver output : outputs) {
      own.add(
          new Output(
              output.pin(),
              driver(output.high(), plus, output.pin(), minus),
              driver(output.low(), minus, output.pin(), plus)));
    }
    gates.add(new Gates(logic, plus, minus, inputs.clone(), List.copyOf(own)));
  }

  /** From its rail to its pin; a device of two terminals points from plus to minus. */
  private Law driver(Device device, int rail, int pin, int other) {
    return device.terminals() == 2 ? law(device, rail, pin) : law(device, rail, pin, other);
  }

  private Law law(Device device, int... nodes) {
    int[] own = device.parameters().stream().mapToInt(this::parameter).toArray();
    return new Law(device, nodes.clone(), own);
  }

  /** Where that parameter stands among the part's; the same name is the same parameter. */
  private int parameter(Parameter parameter) {
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).name().equals(parameter.name())) {
        return i;
      }
    }
    parameters.add(parameter);
    return parameters.size() - 1;
  }
}
