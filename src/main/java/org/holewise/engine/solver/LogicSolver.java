package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Pin;

/**
 * Settles a circuit's logic together with the rest of it: from the moment its supply comes on, and
 * through pulses of a clock. A pulse holds a wire at the clocked part's supply, then at its minus
 * (the other way round where the wire is high at rest), and each time lets everything settle.
 */
public final class LogicSolver {
  private final Circuit circuit;
  private LogicRun run;
  private final Set<LogicRun.Swing> swings = new LinkedHashSet<>();

  private LogicSolver(Circuit circuit, Optional<OperatingPoint> near) {
    this.circuit = circuit;
    run = new LogicRun(circuit, LogicState.start(circuit), near);
  }

  /** As the supply comes on and nothing is clocked. */
  public static Settled settle(Circuit circuit) {
    return new LogicSolver(circuit, Optional.empty()).settled(Optional.empty(), 0);
  }

  /** After so many pulses at the wire of a pin. */
  public static Settled settle(Circuit circuit, Pin clock, int pulses) {
    return new LogicSolver(circuit, Optional.empty()).settled(Optional.of(clock), pulses);
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
    if (then.settled() && run.state.drives().undefined()) {
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
    Optional<Clock> wire = Clock.of(circuit, clock, run);
    if (wire.isEmpty()) {
      return;
    }
    var up = new LogicRun(wire.get().held(true), run.state, run.near());
    var down = new LogicRun(wire.get().held(false), run.state, run.near());
    var first = wire.get().restsHigh() ? down : up;
    var second = wire.get().restsHigh() ? up : down;
    Map<Object, Integer> seen = new HashMap<>();
    int left = pulses;
    while (left > 0) {
      if (!half(first) || !half(second)) {
        return;
      }
      left--;
      Integer before = seen.putIfAbsent(run.state.key(), left);
      if (before != null) {
        left %= before - left;
        seen.clear();
      }
    }
    half(run);
  }

  /** One half of a pulse: from the state as it is; whether it came to rest. */
  private boolean half(LogicRun held) {
    held.state = run.state;
    var result = held.settle(false);
    swings.addAll(result.swings());
    if (result.solved()) {
      run.state = held.state;
    }
    return result.settled();
  }

  private Settled result() {
    var pins = new LinkedHashSet<Pin>();
    for (LogicRun.Swing swing : swings) {
      pins.add(output(swing.part(), swing.output()));
      run.state.outputs()[swing.part()][swing.output()] = Level.UNDEFINED;
    }
    return new Settled(circuit.driving(run.state.drives()), pins, clashes());
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
