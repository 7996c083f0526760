package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Part;
import org.holewise.engine.quantity.Parameter;

/**
 * A circuit to be solved: parts on nets, at a temperature, with edits. Assumes that the netlist has
 * a net for every pin of the parts, and refs that differ. Immutable; {@link #with} costs a copy of
 * a few small arrays.
 *
 * <p>Its reference is the bare metal of the minus pin of the first source in the list of parts.
 * Apart from that the order of parts and nets makes no difference, to the last bit.
 */
public final class Circuit {
  /**
   * Name of the last parameter, the resistance that an edit puts at a contact or between two points
   * (Ω): slopes by it are those by that resistance. Its own value counts for nothing.
   */
  public static final String CONTACT = "contact.ohms";

  final Plan plan;
  final Mounted[] mounted;

  /** Net of each pin. */
  final int[] net;

  /** Resistance between each pin and its net, contact and meter (Ω). */
  final double[] contact;

  final double[] meter;
  final List<Edit> outside;

  /** What the outputs of logic drive. */
  final Drives drives;

  private final Parameter[] parameters;
  final double[] values;

  /** Circuits that differ in values and in what logic drives alone have one of these in common. */
  private final Object shape;

  /** A part's law and the numbers of its parameters among the circuit's; −1: it has none there. */
  record Mounted(Stamp stamp, int[] slots) {}

  private Circuit(Plan plan) {
    this.plan = plan;
    mounted = new Mounted[plan.stamps().size()];
    for (int k = 0; k < mounted.length; k++) {
      int[] first = plan.firstParameter();
      mounted[k] =
          new Mounted(plan.stamps().get(k), IntStream.range(first[k], first[k + 1]).toArray());
    }
    net = plan.pins().keySet().stream().mapToInt(plan.netlist()::net).toArray();
    contact = new double[net.length];
    meter = new double[net.length];
    outside = List.of();
    drives = Drives.NONE;
    shape = new Object();
    parameters = plan.parameters().toArray(Parameter[]::new);
    values = plan.parameters().stream().mapToDouble(Parameter::nominal).toArray();
  }

  private Circuit(Circuit before, List<Edit> outside, Drives drives, Object shape) {
    this.drives = drives;
    this.shape = shape;
    plan = before.plan;
    mounted = before.mounted.clone();
    net = before.net.clone();
    contact = before.contact.clone();
    meter = before.meter.clone();
    this.outside = outside;
    parameters = before.parameters.clone();
    values = before.values.clone();
  }

  /**
   * The circuit of some parts.
   *
   * @param celsius temperature of the surroundings (°C)
   */
  public static Circuit of(List<Part> parts, Netlist netlist, double celsius) {
    return new Circuit(Plan.of(parts, netlist, celsius));
  }

  /** The same parts, as they were given, on other nets. */
  public Circuit on(Netlist netlist) {
    return new Circuit(plan.on(netlist));
  }

  /** The same circuit with changes, made in this order after those it already has. */
  public Circuit with(List<Edit> edits) {
    var added = new ArrayList<>(outside);
    var changed = new Circuit(this, added, drives, new Object());
    edits.forEach(edit -> changed.apply(edit, added));
    return changed;
  }

  /**
   * The same circuit with other true values of its parameters.
   *
   * @param values one for each of {@link #parameters()} (SI)
   */
  public Circuit at(double[] values) {
    if (values.length != this.values.length) {
      throw new IllegalArgumentException(values.length + " values for " + this.values.length);
    }
    var changed = new Circuit(this, outside, drives, shape);
    System.arraycopy(values, 0, changed.values, 0, values.length);
    return changed;
  }

  /** The true values of its {@link #parameters()}, a copy (SI). */
  public double[] values() {
    return values.clone();
  }

  /** Whether parts of it decide what they drive, so that it has to be settled first. */
  public boolean logical() {
    for (Mounted part : mounted) {
      if (!part.stamp().gates.isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** By part and output of its logic: whether anything else touches the output's net or pin. */
  boolean[][] loaded() {
    int[] leads = new int[Arrays.stream(net).max().orElse(0) + 1];
    for (int own : net) {
      leads[own]++;
    }
    boolean[][] loaded = new boolean[mounted.length][0];
    for (int part = 0; part < mounted.length; part++) {
      for (Stamp.Gates gates : mounted[part].stamp.gates) {
        loaded[part] = new boolean[gates.outputs().size()];
        for (int k = 0; k < loaded[part].length; k++) {
          int pin = plan.firstPin()[part] + gates.outputs().get(k).pin();
          loaded[part][k] = leads[net[pin]] > 1 || touched(pin);
        }
      }
    }
    return loaded;
  }

  /** Whether an edit leads to a pin or its net. */
  private boolean touched(int pin) {
    return outside.stream()
        .flatMap(Edit::ends)
        .anyMatch(
            end ->
                end instanceof Point.AtPin at
                    ? plan.pin(at.pin()) == pin
                    : ((Point.AtNet) end).net() == net[pin]);
  }

  /** The same circuit, no output driving anything: its supply is off. */
  public Circuit undriven() {
    return drives == Drives.NONE ? this : driving(Drives.NONE);
  }

  /** Whether it is solved with undefined outputs low, where they may as well be high. */
  public boolean doubtful() {
    return !drives.doubt() && drives.undefined();
  }

  /** The same circuit with undefined outputs high and unconnected nets at the top of the supply. */
  public Circuit doubted() {
    return driving(drives.doubting(true));
  }

  Circuit driving(Drives other) {
    return new Circuit(this, outside, other, shape);
  }

  /**
   * Whether every part's currents are proportional to its voltages: no device, no limited source.
   */
  public boolean linear() {
    for (Mounted part : mounted) {
      if (!part.stamp().linear()) {
        return false;
      }
    }
    return true;
  }

  /** The point whose voltage is zero. */
  public Point reference() {
    return plan.earth().<Point>map(Point.AtPin::new).orElse(new Point.AtNet(0));
  }

  /** How many nets the netlist has; they are numbered from 0, and strips beyond are fresh ones. */
  public int nets() {
    return plan.nets();
  }

  /**
   * Every uncertain number, in an order that depends on the list of parts alone: a part that is
   * replaced may change values, a part that is taken out keeps its places.
   */
  public List<Parameter> parameters() {
    return List.of(parameters);
  }

  /** Whether the two differ in nothing but values and at what voltage capacitors are held. */
  boolean shapedAs(Circuit other) {
    return shape == other.shape && drives.shapedAs(other.drives);
  }

  /** Whether the two have the same uncertain numbers, values left aside. */
  public boolean sameParameters(Circuit other) {
    return Arrays.equals(parameters, other.parameters);
  }

  private void apply(Edit edit, List<Edit> added) {
    if (edit instanceof Edit.Contact c) {
      contact[plan.pin(c.pin())] = c.ohms();
    } else if (edit instanceof Edit.InSeries s) {
      meter[plan.pin(s.pin())] = s.ohms();
    } else if (edit instanceof Edit.Moved m) {
      net[plan.pin(m.pin())] = m.net();
    } else if (edit instanceof Edit.Without w) {
      int k = plan.part(w.ref());
      mounted[k] = new Mounted(mounted[k].stamp.withoutLaw(), new int[0]);
    } else if (edit instanceof Edit.Instead i) {
      replace(plan.part(i.part().ref()), Stamp.of(i.part(), plan.celsius(), plan.netlist()));
    } else {
      added.add(edit);
    }
  }

  private void replace(int k, Stamp stamp) {
    int[] slots = new int[stamp.parameters.size()];
    for (int j = 0; j < slots.length; j++) {
      slots[j] = slot(k, stamp.parameters.get(j).name());
      if (slots[j] >= 0) {
        parameters[slots[j]] = stamp.parameters.get(j);
        values[slots[j]] = stamp.parameters.get(j).nominal();
      }
    }
    mounted[k] = new Mounted(stamp, slots);
  }

  /** Number of the part's parameter of that name; −1 where it had none as it was given. */
  private int slot(int k, String name) {
    for (int i = plan.firstParameter()[k]; i < plan.firstParameter()[k + 1]; i++) {
      if (parameters[i].name().equals(name)) {
        return i;
      }
    }
    return -1;
  }
}
