package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
  private static final int PIECES = 8;

  /** How closely a voltage must come again to be the same (share of the supply). */
  private static final double AGAIN = 1e-6;

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

  Optional<Rhythm> rhythm() {
    var turns = new ArrayList<Rhythm.Beat>();
    double volts = 0;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      if (!settle(volts, turn == 0) || turn == 0 && !atLogic()) {
        return Optional.empty();
      }
      Optional<Rhythm.Beat> beat = beat(volts);
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
    return outcome instanceof OperatingPoint point ? Optional.of(point) : Optional.empty();
  }

  /** From a voltage to where the logic turns; empty where the capacitor comes to rest before. */
  private Optional<Rhythm.Beat> beat(double volts) {
    double amps = point(volts).map(OperatingPoint::charging).orElse(0.0);
    if (amps == 0) {
      return Optional.empty();
    }
    double way = Math.signum(amps);
    double here = volts;
    double there = volts + way * reach();
    for (int k = 0; k < HALVINGS; k++) {
      double middle = (here + there) / 2;
      if (over(middle, way)) {
        there = middle;
      } else {
        here = middle;
      }
    }
    double end = there;
    return point(end)
        .filter(this::turned)
        .map(point -> new Rhythm.Beat(time(volts, end), state.copy(), volts, end));
  }

  private double reach() {
    double reach = 1;
    for (Elements.Source source : new Elements(circuit, new Spots(circuit)).sources) {
      reach += source.volts;
    }
    return 2 * reach;
  }

  private boolean over(double volts, double way) {
    Optional<OperatingPoint> point = point(volts);
    return point.isEmpty() || point.get().charging() * way <= 0 || turned(point.get());
  }

  /** Whether any input reads another level than it did. */
  private boolean turned(OperatingPoint point) {
    Circuit held = point.circuit();
    LogicSenses senses = LogicSenses.of(held, point);
    for (Stamp.Gates gates : held.mounted[swinging].stamp().gates) {
      for (int k = 0; k < gates.inputs().length; k++) {
        Level before = state.inputs()[swinging][k];
        Level now =
            senses.undriven()[swinging][k]
                ? gates.logic().open(k)
                : gates
                    .logic()
                    .read(k, senses.volts()[swinging], senses.supply()[swinging], before);
        if (now != before) {
          return true;
        }
      }
    }
    return false;
  }

  private double time(double from, double to) {
    double seconds = 0;
    double step = (to - from) / PIECES;
    double before = point(from).map(OperatingPoint::charging).orElse(0.0);
    for (int k = 1; k <= PIECES; k++) {
      double after = point(from + k * step).map(OperatingPoint::charging).orElse(0.0);
      seconds += farads * step * inverse(before, after);
      before = after;
    }
    return seconds;
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
    return new Rhythm(swinging, output, List.copyOf(turned), rest.state(), hold);
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
