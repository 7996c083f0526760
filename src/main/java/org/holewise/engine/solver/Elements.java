package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Device;
import org.holewise.engine.part.Wave;

/**
 * The elements of a circuit with its edits, between spots, parts in the order of their refs. Made
 * for one search: sources and laws carry what the search changes.
 */
final class Elements {

  record Join(int a, int b) {}

  /** A resistance; {@code slot} is its parameter's number, −1 where it is none. */
  record Resistance(int a, int b, double siemens, int slot) {}

  /** A capacitance; {@code slot} as of a resistance. */
  record Capacitance(int a, int b, double farads, int slot) {}

  record Feed(int into, int from, double amps) {}

  /** A source of voltage, whose current into plus is an unknown. */
  static final class Source {
    final int plus;
    final int minus;
    final double volts;
    final double limit;
    final int slot;

    /** −1 where the source was written the other way round, with a voltage below zero. */
    final int sign;

    /** Whether its voltage has given way. */
    boolean limiting;

    /** What it swings by, for a generator; in the sense of plus and minus here. */
    Optional<Swing> swing = Optional.empty();

    /** Inductance of a source of nothing that stands for one (H); 0 for any other. */
    double henries;

    int henriesSlot = -1;

    Source(int plus, int minus, double volts, double limit, int slot) {
      boolean turned = volts < 0;
      this.plus = turned ? minus : plus;
      this.minus = turned ? plus : minus;
      this.volts = Math.abs(volts);
      this.sign = turned ? -1 : 1;
      this.limit = limit;
      this.slot = slot;
    }
  }

  /** How a generator swings: its peak (V) and whose number that is. */
  record Swing(double peak, int slot, double hertz, Wave wave) {}

  /** A device, and room for its voltages, currents and slopes. */
  static final class Law {
    final Device device;
    final int[] spots;
    final int[] slots;
    final double[] p;
    final double[] v;
    final double[] last;
    final double[] i;
    final double[] dv;
    final double[] dp;

    /** An aid: the share of the difference of its inputs that an amplifier sees. */
    double gain = 1;

    Law(Device device, int[] spots, int[] slots, double[] p) {
      this.device = device;
      this.spots = spots;
      this.slots = slots;
      this.p = p;
      int n = spots.length;
      v = new double[n];
      last = new double[n];
      i = new double[n];
      dv = new double[n * n];
      dp = new double[n * p.length];
    }

    void evaluate() {
      if (gain == 1 || !device.amplifies()) {
        device.evaluate(v, p, i, dv, dp);
        return;
      }
      double kept = v[1];
      v[1] = v[2] + gain * (v[1] - v[2]);
      device.evaluate(v, p, i, dv, dp);
      v[1] = kept;
      int n = spots.length;
      for (int s = 0; s < n; s++) {
        dv[s * n + 2] += (1 - gain) * dv[s * n + 1];
        dv[s * n + 1] *= gain;
      }
    }

    /** Holds a step back, as the device asks. */
    boolean limit() {
      if (gain == 1 || !device.amplifies()) {
        return device.limit(v, last, p);
      }
      v[1] = v[2] + gain * (v[1] - v[2]);
      last[1] = last[2] + gain * (last[1] - last[2]);
      boolean held = device.limit(v, last, p);
      v[1] = v[2] + (v[1] - v[2]) / gain;
      return held;
    }
  }

  final List<Join> joins = new ArrayList<>();
  final List<Resistance> resistances = new ArrayList<>();
  final List<Source> sources = new ArrayList<>();
  final List<Capacitance> capacitances = new ArrayList<>();
  final List<Law> laws = new ArrayList<>();
  final List<Feed> feeds = new ArrayList<>();

  /** How many of the resistances and sources belong to parts; the rest are edits. */
  final int ownResistances;

  final int ownSources;

  Elements(Circuit circuit, Spots spots) {
    for (int part : circuit.plan.order()) {
      add(circuit, spots, part);
    }
    for (Drives.Hold hold : circuit.drives.holds()) {
      Stamp.Capacitor at = circuit.mounted[hold.part()].stamp().capacitors.get(hold.capacitor());
      sources.add(
          new Source(
              spots.own(hold.part(), at.a()),
              spots.own(hold.part(), at.b()),
              hold.volts(),
              Double.POSITIVE_INFINITY,
              -1));
    }
    ownResistances = resistances.size();
    ownSources = sources.size();
    for (int part : circuit.plan.order()) {
      addContacts(circuit, spots, part);
    }
    circuit.outside.forEach(edit -> add(circuit, edit, spots));
  }

  /** More than any two nodes can be apart: all sources in a row, all feeds through 1 GΩ (V). */
  double reach() {
    double volts = 1;
    for (Source source : sources) {
      volts += source.volts;
    }
    for (Feed feed : feeds) {
      volts += Math.abs(feed.amps()) / Nodes.FLOATING;
    }
    return volts;
  }

  private void add(Circuit circuit, Spots spots, int part) {
    Stamp stamp = circuit.mounted[part].stamp();
    int[] slots = circuit.mounted[part].slots();
    for (Stamp.Join j : stamp.joins) {
      joins.add(new Join(spots.own(part, j.a()), spots.own(part, j.b())));
    }
    for (Stamp.Resistance r : stamp.resistances) {
      double ohms = value(circuit, stamp, slots, r.parameter());
      resistances.add(
          new Resistance(
              spots.own(part, r.a()), spots.own(part, r.b()), 1 / ohms, slots[r.parameter()]));
    }
    for (Stamp.Source s : stamp.sources) {
      sources.add(source(circuit, spots, part, s));
    }
    for (Stamp.Inductor l : stamp.inductors) {
      var source =
          new Source(
              spots.own(part, l.a()), spots.own(part, l.b()), 0, Double.POSITIVE_INFINITY, -1);
      source.henries = value(circuit, stamp, slots, l.parameter());
      source.henriesSlot = slots[l.parameter()];
      sources.add(source);
    }
    for (Stamp.Capacitor c : stamp.capacitors) {
      capacitances.add(
          new Capacitance(
              spots.own(part, c.a()),
              spots.own(part, c.b()),
              value(circuit, stamp, slots, c.parameter()),
              slots[c.parameter()]));
    }
    for (Stamp.Law law : stamp.laws) {
      addLaw(circuit, spots, part, law);
    }
    for (Stamp.Gates gates : stamp.gates) {
      for (int k = 0; k < gates.outputs().size(); k++) {
        Stamp.Output output = gates.outputs().get(k);
        circuit
            .drives
            .of(part, k)
            .ifPresent(high -> addLaw(circuit, spots, part, high ? output.high() : output.low()));
      }
    }
  }

  private static Source source(Circuit circuit, Spots spots, int part, Stamp.Source s) {
    Stamp stamp = circuit.mounted[part].stamp();
    int[] slots = circuit.mounted[part].slots();
    var source =
        new Source(
            spots.own(part, s.plus()),
            spots.own(part, s.minus()),
            value(circuit, stamp, slots, s.parameter()),
            s.limit(),
            slots[s.parameter()]);
    source.swing =
        s.swing()
            .map(
                swing ->
                    new Swing(
                        value(circuit, stamp, slots, swing.peak()),
                        slots[swing.peak()],
                        swing.hertz(),
                        swing.wave()));
    return source;
  }

  private void addLaw(Circuit circuit, Spots spots, int part, Stamp.Law law) {
    Circuit.Mounted mounted = circuit.mounted[part];
    int[] at = new int[law.spots().length];
    for (int t = 0; t < at.length; t++) {
      at[t] = spots.own(part, law.spots()[t]);
    }
    int[] slots = new int[law.parameters().length];
    double[] p = new double[slots.length];
    for (int k = 0; k < p.length; k++) {
      slots[k] = mounted.slots()[law.parameters()[k]];
      p[k] = value(circuit, mounted.stamp(), mounted.slots(), law.parameters()[k]);
    }
    laws.add(new Law(law.device(), at, slots, p));
  }

  private static double value(Circuit circuit, Stamp stamp, int[] slots, int parameter) {
    return slots[parameter] < 0
        ? stamp.parameters.get(parameter).nominal()
        : circuit.values[slots[parameter]];
  }

  private void addContacts(Circuit circuit, Spots spots, int part) {
    int[] first = circuit.plan.firstPin();
    for (int pin = first[part]; pin < first[part + 1]; pin++) {
      connect(
          circuit,
          spots.pin(pin),
          spots.net(circuit.net[pin]),
          circuit.contact[pin] + circuit.meter[pin]);
    }
  }

  private void connect(Circuit circuit, int a, int b, double ohms) {
    if (ohms > 0) {
      resistances.add(new Resistance(a, b, 1 / ohms, circuit.values.length - 1));
    } else {
      joins.add(new Join(a, b));
    }
  }

  private void add(Circuit circuit, Edit edit, Spots spots) {
    if (edit instanceof Edit.Across a) {
      connect(circuit, spots.at(a.one()), spots.at(a.other()), a.ohms());
    } else if (edit instanceof Edit.Feed f) {
      feeds.add(new Feed(spots.at(f.into()), spots.at(f.from()), f.amps()));
    } else if (edit instanceof Edit.Source s) {
      sources.add(new Source(spots.at(s.plus()), spots.at(s.minus()), s.volts(), s.limit(), -1));
    }
  }
}
