package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Pin;

/**
 * Settles a circuit's logic together with the rest of it: from the moment its supply comes on, and
 * through pulses of a clock. A pulse holds a wire at the clocked part's supply, then at its minus
 * (the other way round where the wire is high at rest), and each time lets everything settle.
 */
public final class LogicSolver {
  private final Circuit circuit;
  private final LogicRun run;
  private final Optional<Rhythm> rhythm;
  private final Set<LogicRun.Swing> swings = new LinkedHashSet<>();
  private final List<Trace.Sample> way = new ArrayList<>();

  private LogicSolver(Circuit circuit, Optional<Rhythm> rhythm) {
    this.rhythm = rhythm;
    LogicState start = LogicState.start(circuit);
    this.circuit = holding(circuit, rhythm);
    rhythm.ifPresent(own -> start.take(own.rest(), own.part()));
    run = new LogicRun(this.circuit, start, Optional.empty());
  }

  /** The circuit with the capacitor of its clock held. */
  static Circuit holding(Circuit circuit, Optional<Rhythm> rhythm) {
    return rhythm
        .map(own -> circuit.driving(Drives.NONE.holding(List.of(own.hold()))))
        .orElse(circuit.undriven());
  }

  /**
   * The same of a circuit that differs little from one that is settled on the same occasion: where
   * it rests in the states that the other went through, it is taken to have gone the same way.
   */
  public static Settled settle(Circuit circuit, Optional<Pin> clock, int pulses, Settled like) {
    Trace trace = like.way().trace;
    if (!trace.holds(circuit, clock)) {
      return new LogicSolver(circuit, Rhythm.same(trace.rhythm(), circuit)).settled(clock, pulses);
    }
    Drives drives = trace.samples().get(0).state().drives();
    Circuit driven = circuit.driving(drives.holding(like.circuit().drives.holds()));
    return new Settled(driven, like.swinging(), List.of(), like.clock(), like.way());
  }

  /** With a clock of its own at rest, everything else as the supply comes on. */
  static LogicSolver resting(Circuit circuit, Rhythm rhythm) {
    var solver = new LogicSolver(circuit, Optional.of(rhythm));
    solver.powerUp();
    return solver;
  }

  LogicState state() {
    return run.state;
  }

  /**
   * What a number does while a circuit runs by a clock of its own; empty where it has none or never
   * comes to rest between pulses.
   */
  public static Optional<Cycle> cycle(Circuit circuit, ToDoubleFunction<OperatingPoint> number) {
    return Rhythm.of(circuit).flatMap(own -> new CycleRun(circuit, own).watch(number));
  }

  /** The same of a circuit that settled so. */
  public static Optional<Cycle> cycle(
      Circuit circuit, Settled settled, ToDoubleFunction<OperatingPoint> number) {
    return Rhythm.like(settled.way().trace.rhythm(), circuit)
        .flatMap(own -> new CycleRun(circuit, own).watch(number));
  }

  /** How often the output swings that makes a circuit's own clock (Hz). */
  public static OptionalDouble frequency(Circuit circuit) {
    return frequency(Rhythm.of(circuit));
  }

  /** The same of a circuit that settled so, or hardly otherwise. */
  public static OptionalDouble frequency(Circuit circuit, Settled settled) {
    return frequency(Rhythm.like(settled.way().trace.rhythm(), circuit));
  }

  private static OptionalDouble frequency(Optional<Rhythm> rhythm) {
    return rhythm.isPresent()
        ? OptionalDouble.of(1 / rhythm.get().period())
        : OptionalDouble.empty();
  }

  /** As the supply comes on and nothing is clocked. */
  public static Settled settle(Circuit circuit) {
    return new LogicSolver(circuit, Rhythm.of(circuit)).settled(Optional.empty(), 0);
  }

  /** After so many pulses at the wire of a pin. */
  public static Settled settle(Circuit circuit, Pin clock, int pulses) {
    return new LogicSolver(circuit, Rhythm.of(circuit)).settled(Optional.of(clock), pulses);
  }

  private Settled settled(Optional<Pin> clock, int pulses) {
    if (powerUp() && clock.isPresent() && pulses > 0) {
      pulse(clock.get(), pulses);
    }
    return result();
  }

  /** Whether there is anything to clock. */
  private boolean powerUp() {
    var first = run.settle(true);
    if (!first.solved()) {
      return false;
    }
    var then = run.settle(false);
    swings.addAll(then.swings());
    if (then.settled() && run.undefined()) {
      swings.addAll(hidden());
    }
    return true;
  }

  /** Swings that three values hide: a ring of inverters is undefined all round. */
  private Set<LogicRun.Swing> hidden() {
    var guess = new LogicRun(circuit, run.state.guessed(), run.near());
    return guess.settle(false).swings();
  }

  private void pulse(Pin clock, int pulses) {
    Optional<Pulses> wire = pulses(clock);
    if (wire.isEmpty()) {
      return;
    }
    boolean first = !wire.get().restsHigh();
    Map<Object, Integer> seen = new HashMap<>();
    int left = pulses;
    while (left > 0) {
      if (!wire.get().half(first) || !wire.get().half(!first)) {
        return;
      }
      left--;
      Integer before = seen.putIfAbsent(run.state.key(), left);
      if (before != null) {
        left %= before - left;
        seen.clear();
      }
    }
    swings.addAll(run.settle(false).swings());
  }

  /** Empty where nothing on the wire can be clocked. */
  Optional<Pulses> pulses(Pin clock) {
    return Clock.of(circuit, clock, run).map(Pulses::new);
  }

  /** A wire that is held high and low in turn. */
  final class Pulses {
    private final boolean restsHigh;
    private final LogicRun up;
    private final LogicRun down;

    private Pulses(Clock wire) {
      restsHigh = wire.restsHigh();
      up = new LogicRun(wire.held(true), run.state, run.near());
      down = new LogicRun(wire.held(false), run.state, run.near());
    }

    boolean restsHigh() {
      return restsHigh;
    }

    /** One half of a pulse, from the state as it is; whether it comes to rest. */
    boolean half(boolean high) {
      LogicRun held = high ? up : down;
      held.state = run.state;
      var result = held.settle(false);
      swings.addAll(result.swings());
      if (result.solved()) {
        run.state = held.state;
        way.add(new Trace.Sample(Optional.of(high), held.state));
      }
      return result.settled();
    }

    /** Voltages and currents in one half of the pulse. */
    Optional<OperatingPoint> point(boolean high) {
      return (high ? up : down).now().map(LogicSenses::point);
    }
  }

  private Settled result() {
    var pins = new LinkedHashSet<Pin>();
    for (LogicRun.Swing swing : swings) {
      pins.add(output(swing.part(), swing.output()));
      run.state.outputs()[swing.part()][swing.output()] = Level.UNDEFINED;
    }
    var last = new Trace.Sample(Optional.empty(), run.state);
    return new Settled(
        circuit.driving(run.state.drives().holding(circuit.drives.holds())),
        pins,
        clashes(),
        rhythm.map(own -> own.clock(circuit)),
        new Settled.Way(Trace.of(way, last, rhythm)));
  }

  private Pin output(int part, int output) {
    int pin = circuit.mounted[part].stamp().gates.get(0).outputs().get(output).pin();
    return circuit.plan.pinOf(part, pin);
  }

  private List<Settled.Clash> clashes() {
    Optional<LogicSenses> senses = run.now();
    var clashes = new ArrayList<Settled.Clash>();
    if (senses.isEmpty()) {
      return clashes;
    }
    Map<Integer, Pin> high = new HashMap<>();
    Map<Integer, Pin> low = new HashMap<>();
    for (int part = 0; part < circuit.mounted.length; part++) {
      for (Stamp.Gates gates : circuit.mounted[part].stamp().gates) {
        for (int k = 0; k < gates.outputs().size(); k++) {
          int metal = senses.get().point().metal(part, gates.outputs().get(k).pin());
          Level level = run.state.outputs()[part][k];
          if (level.defined()) {
            (level == Level.HIGH ? high : low).putIfAbsent(metal, output(part, k));
          }
        }
      }
    }
    high.entrySet().stream()
        .filter(entry -> low.containsKey(entry.getKey()))
        .map(
            entry ->
                new Settled.Clash(
                    entry.getValue(), low.getOrDefault(entry.getKey(), entry.getValue())))
        .sorted(Comparator.comparing(clash -> clash.high().toString()))
        .forEach(clashes::add);
    return clashes;
  }
}
