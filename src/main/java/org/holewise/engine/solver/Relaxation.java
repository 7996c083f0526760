package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.holewise.engine.part.Level;

/**
 * Follows one capacitor from empty, from turn to turn of the logic at it.
 *
 * <p>Method: the capacitor is held at a voltage and the current into it solved for; where the logic
 * reads that voltage otherwise, it turns. The time between is the integral of C/i over the voltage,
 * each piece by i's logarithmic mean, which is exact where the current is linear in the voltage (so
 * for the astable of the books: Kuphaldt, Lessons in Electric Circuits, Semiconductors 9). A
 * current that comes to nothing before the logic turns is a rest.
 */
final class Relaxation {
  private static final int MOST_TURNS = 16;
  private static final int HALVINGS = 44;

  /** How closely a turn is found (share of the supply). */
  private static final double CLOSE = 1e-10;

  /** Bend of a current below which a stretch is one piece (share of it), and halvings at most. */
  private static final double STRAIGHT = 1e-5;

  private static final int MOST_DEPTH = 4;

  /** How closely a voltage must come again to be the same (share of the supply). */
  private static final double AGAIN = 1e-6;

  /** How closely currents and voltages agree that are the same (share of them). */
  private static final double SAME = 1e-9;

  private final Circuit circuit;
  private final int part;
  private final int capacitor;
  private final double farads;
  private LogicState state;
  private Optional<OperatingPoint> near = Optional.empty();
  private int swinging = -1;

  Relaxation(Circuit circuit, int part, int capacitor) {
    this.circuit = circuit;
    this.part = part;
    this.capacitor = capacitor;
    Circuit.Mounted mounted = circuit.mounted[part];
    int parameter = mounted.stamp().capacitors.get(capacitor).parameter();
    farads =
        mounted.slots()[parameter] < 0
            ? mounted.stamp().parameters.get(parameter).nominal()
            : circuit.values[mounted.slots()[parameter]];
    state = LogicState.start(circuit);
  }

  private Circuit held(double volts) {
    var hold = new Drives.Hold(part, capacitor, volts);
    return circuit.driving(state.drives().holding(List.of(hold)));
  }

  /** One that starts where another circuit's clock was on its first beat. */
  static Relaxation like(Circuit circuit, Rhythm known) {
    var relaxation = new Relaxation(circuit, known.hold().part(), known.hold().capacitor());
    relaxation.state = known.rest().copy();
    relaxation.near = Optional.of(known.course().near());
    relaxation.swinging = known.part();
    return relaxation;
  }

  /** Whether it goes the way that is known: everywhere looked at, all that decides is the same. */
  boolean goes(Rhythm.Course known) {
    for (int k = 0; k < known.turns().size(); k++) {
      Rhythm.Beat turn = known.turns().get(k);
      state = turn.state().copy();
      if (!settle(turn.from(), false)
          || !Arrays.equals(state.outputs()[swinging], turn.state().outputs()[swinging])
          || !same(sights(turn), known.sights().get(k))) {
        return false;
      }
    }
    return true;
  }

  private static boolean same(double[] one, double[] other) {
    boolean same = one.length == other.length && one.length > 0;
    for (int k = 0; same && k < one.length; k++) {
      same = Math.abs(one[k] - other[k]) <= SAME * Math.abs(other[k]);
    }
    return same;
  }

  /**
   * How fast the capacitor is charged and what the logic at it sees; nothing where there is no
   * solution.
   */
  private double[] sights(Rhythm.Beat turn) {
    return DoubleStream.of(turn.from(), (turn.from() + turn.to()) / 2, turn.to())
        .mapToObj(this::point)
        .flatMapToDouble(point -> point.stream().flatMapToDouble(this::sights))
        .toArray();
  }

  private DoubleStream sights(OperatingPoint point) {
    LogicSenses senses = LogicSenses.of(point.circuit(), point);
    return DoubleStream.concat(
        DoubleStream.of(point.charging() / farads, senses.supply()[swinging]),
        Arrays.stream(senses.volts()[swinging]));
  }

  /** From empty, as the supply comes on. */
  Optional<Rhythm> rhythm() {
    return settle(0, true) && atLogic() ? turns(0) : Optional.empty();
  }

  /** From a voltage on its way. */
  Optional<Rhythm> again(double volts) {
    return settle(volts, false) && atLogic() ? turns(volts) : Optional.empty();
  }

  private Optional<Rhythm> turns(double start) {
    var turns = new ArrayList<Rhythm.Beat>();
    double volts = start;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      Optional<Rhythm.Beat> beat =
          turn == 0 || settle(volts, false) ? beat(volts) : Optional.empty();
      if (beat.isEmpty()) {
        return Optional.empty();
      }
      turns.add(beat.get());
      int before = again(turns);
      if (before >= 0 && turns.size() - 1 - before > 1) {
        return Optional.of(rhythm(turns.subList(before, turns.size() - 1)));
      }
      volts = beat.get().to() + Math.signum(beat.get().to() - volts) * 1e-9;
    }
    return Optional.empty();
  }

  private boolean settle(double volts, boolean fresh) {
    var run = new LogicRun(held(volts), state, near);
    boolean settled = run.settle(fresh).settled() && (!fresh || run.settle(false).settled());
    state = run.state;
    near = run.near();
    return settled;
  }

  /** Whether an end of the capacitor is at an input with two thresholds. */
  private boolean atLogic() {
    Optional<OperatingPoint> point = point(0);
    if (point.isEmpty()) {
      return false;
    }
    Stamp.Capacitor own = circuit.mounted[part].stamp().capacitors.get(capacitor);
    int one = point.get().metal(part, own.a());
    int other = point.get().metal(part, own.b());
    for (int k = 0; k < circuit.mounted.length; k++) {
      for (Stamp.Gates gates : circuit.mounted[k].stamp().gates) {
        for (int input = 0; input < gates.inputs().length; input++) {
          int metal = point.get().metal(k, gates.inputs()[input]);
          if (gates.logic().waits(input) && (metal == one || metal == other)) {
            swinging = k;
            return true;
          }
        }
      }
    }
    return false;
  }

  private Optional<OperatingPoint> point(double volts) {
    Circuit held = held(volts);
    Outcome outcome =
        near.map(start -> OperatingPointSolver.solve(held, start))
            .orElseGet(() -> OperatingPointSolver.solve(held));
    if (outcome instanceof OperatingPoint point) {
      near = Optional.of(point);
      return near;
    }
    return Optional.empty();
  }

  /**
   * The circuit with the capacitor at one voltage: what charges it (A), what the inputs of the
   * logic at it see, and whether it is over there: nothing charges it further, or an input reads
   * another level than it did.
   */
  private record Look(
      double volts, double amps, double[] inputs, double supply, boolean[] undriven, boolean over) {

    /** As if everything went in proportion from here to there. */
    Look toward(Look there, double share, Relaxation relaxation, double way) {
      double[] between = inputs.clone();
      for (int k = 0; k < between.length; k++) {
        between[k] += share * (there.inputs[k] - inputs[k]);
      }
      return relaxation.look(
          volts + share * (there.volts - volts),
          amps + share * (there.amps - amps),
          between,
          supply + share * (there.supply - supply),
          undriven,
          way);
    }
  }

  private Look look(
      double volts, double amps, double[] inputs, double supply, boolean[] undriven, double way) {
    boolean over = !(amps * way > 0) || turned(inputs, supply, undriven);
    return new Look(volts, amps, inputs, supply, undriven, over);
  }

  /** Empty where there the circuit has no solution. */
  private Optional<Look> look(double volts, double way) {
    return point(volts)
        .map(
            point -> {
              LogicSenses senses = LogicSenses.of(point.circuit(), point);
              return look(
                  volts,
                  point.charging(),
                  senses.volts()[swinging],
                  senses.supply()[swinging],
                  senses.undriven()[swinging],
                  way);
            });
  }

  /** From a voltage to where the logic turns; empty where the capacitor comes to rest before. */
  private Optional<Rhythm.Beat> beat(double volts) {
    double amps = point(volts).map(OperatingPoint::charging).orElse(0.0);
    double way = Math.signum(amps);
    return look(volts, way)
        .filter(here -> way != 0)
        .flatMap(here -> turn(here, way))
        .filter(end -> end.amps() * way > 0)
        .map(
            end ->
                new Rhythm.Beat(
                    time(new Charge(volts, amps), new Charge(end.volts(), end.amps()), 0),
                    state.copy(),
                    volts,
                    end.volts()));
  }

  /**
   * Where it is over, as closely as {@value #CLOSE} of the supply: where it would be if all went in
   * proportion between the two places known, and a hair beside; every third time in the middle.
   */
  private Optional<Look> turn(Look start, double way) {
    double hair = CLOSE * reach() * way;
    Look here = start;
    Optional<Look> there = look(start.volts() + way * reach(), way);
    for (int k = 0; k < HALVINGS && there.isPresent() && there.get().over(); k++) {
      Look end = there.get();
      double left = end.volts() - here.volts();
      if (Math.abs(left) <= 2 * Math.abs(hair)) {
        return there;
      }
      double share = k % 3 == 2 ? 0.5 : share(here, end, way);
      Optional<Look> middle = look(here.volts() + share * left, way);
      Optional<Look> beside = middle.flatMap(m -> look(m.volts() + (m.over() ? -hair : hair), way));
      for (Look look : List.of(middle, beside).stream().flatMap(Optional::stream).toList()) {
        boolean within =
            Math.abs(look.volts() - here.volts()) < Math.abs(end.volts() - here.volts());
        if (look.over() && within) {
          end = look;
        } else if (!look.over()) {
          here = look;
        }
      }
      there = Optional.of(end);
    }
    return there;
  }

  private double share(Look here, Look there, double way) {
    double low = 0;
    double high = 1;
    for (int k = 0; k < HALVINGS; k++) {
      double middle = (low + high) / 2;
      if (here.toward(there, middle, this, way).over()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private double reach() {
    double reach = 1;
    for (Elements.Source source : new Elements(circuit, new Spots(circuit)).sources) {
      reach += source.volts;
    }
    return 2 * reach;
  }

  /** Whether any input reads another level than it did. */
  private boolean turned(double[] volts, double supply, boolean[] undriven) {
    for (Stamp.Gates gates : circuit.mounted[swinging].stamp().gates) {
      for (int k = 0; k < gates.inputs().length; k++) {
        Level before = state.inputs()[swinging][k];
        Level now =
            undriven[k] ? gates.logic().open(k) : gates.logic().read(k, volts, supply, before);
        if (now != before) {
          return true;
        }
      }
    }
    return false;
  }

  /** What charges the capacitor at a voltage (A). */
  private record Charge(double volts, double amps) {}

  /** Halves the way until the current runs in proportion with the voltage. */
  private double time(Charge from, Charge to, int depth) {
    double middle = (from.volts() + to.volts()) / 2;
    var between =
        new Charge(middle, point(middle).map(OperatingPoint::charging).orElse(from.amps()));
    double bend = Math.abs(between.amps() - (from.amps() + to.amps()) / 2);
    return bend <= STRAIGHT * Math.abs(between.amps()) || depth == MOST_DEPTH
        ? farads * (to.volts() - from.volts()) * inverse(from.amps(), to.amps())
        : time(from, between, depth + 1) + time(between, to, depth + 1);
  }

  /** Mean of 1/i where i runs linearly from one current to another of its sign. */
  private static double inverse(double one, double other) {
    double ratio = other / one;
    return Math.abs(ratio - 1) < 1e-9 ? 1 / one : StrictMath.log(ratio) / (other - one);
  }

  /** The turn that the last one repeats; −1 where it is none. */
  private int again(List<Rhythm.Beat> turns) {
    Rhythm.Beat last = turns.get(turns.size() - 1);
    for (int k = 0; k < turns.size() - 1; k++) {
      Rhythm.Beat beat = turns.get(k);
      boolean same =
          Arrays.equals(beat.state().outputs()[swinging], last.state().outputs()[swinging]);
      if (same && Math.abs(beat.from() - last.from()) < AGAIN * reach()) {
        return k;
      }
    }
    return -1;
  }

  /** Begins with the beat on which the clock is low, as a settled circuit shows it. */
  private Rhythm rhythm(List<Rhythm.Beat> turns) {
    var sights = new ArrayList<double[]>();
    for (Rhythm.Beat turn : turns) {
      state = turn.state().copy();
      sights.add(sights(turn));
    }
    var course = new Rhythm.Course(List.copyOf(turns), sights, near.orElseThrow());
    int output = swings(turns);
    List<Rhythm.Beat> beats = merged(turns, output);
    int first = 0;
    for (int k = beats.size() - 1; k >= 0; k--) {
      if (beats.get(k).state().outputs()[swinging][output] == Level.LOW) {
        first = k;
      }
    }
    var turned = new ArrayList<>(beats.subList(first, beats.size()));
    turned.addAll(beats.subList(0, first));
    Rhythm.Beat rest = turned.get(0);
    var hold = new Drives.Hold(part, capacitor, (rest.from() + rest.to()) / 2);
    return new Rhythm(swinging, output, List.copyOf(turned), rest.state(), hold, course);
  }

  /** Turns between which the clock stays as it is are one beat. */
  private List<Rhythm.Beat> merged(List<Rhythm.Beat> turns, int output) {
    var beats = new ArrayList<Rhythm.Beat>();
    for (Rhythm.Beat turn : turns) {
      int last = beats.size() - 1;
      if (last >= 0 && level(beats.get(last), output) == level(turn, output)) {
        beats.set(last, together(beats.get(last), turn));
      } else {
        beats.add(turn);
      }
    }
    int last = beats.size() - 1;
    if (last > 0 && level(beats.get(last), output) == level(beats.get(0), output)) {
      beats.set(0, together(beats.remove(last), beats.get(0)));
    }
    return beats;
  }

  private Level level(Rhythm.Beat beat, int output) {
    return beat.state().outputs()[swinging][output];
  }

  private static Rhythm.Beat together(Rhythm.Beat one, Rhythm.Beat next) {
    return new Rhythm.Beat(one.seconds() + next.seconds(), next.state(), one.from(), next.to());
  }

  /** The first output that is not the same on all beats. */
  private int swings(List<Rhythm.Beat> beats) {
    Level[] first = beats.get(0).state().outputs()[swinging];
    for (int k = 0; k < first.length; k++) {
      for (Rhythm.Beat beat : beats) {
        if (beat.state().outputs()[swinging][k] != first[k]) {
          return k;
        }
      }
    }
    return 0;
  }
}
