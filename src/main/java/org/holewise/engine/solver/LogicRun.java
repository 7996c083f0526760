package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Logic;

/**
 * Steps a circuit's logic until nothing changes.
 *
 * <p>Method: each step solves the circuit with the outputs driving as they do, reads every input's
 * voltage against the thresholds of its part, and lets every part take one step at once (a unit of
 * delay for all, as in Ulrich 1969, Communications of the ACM 12(2)). Undefined outputs are solved
 * high and low; an input is defined where both agree. Voltages depend on nothing but what outputs
 * drive that something hangs on, so that each such pattern is solved once.
 *
 * <p>Invariant: a state that comes again never ends; that is an oscillation, and the outputs that
 * differ on the way are those that swing.
 */
final class LogicRun {
  private static final int MOST_STEPS = 4_000;

  /** Patterns of outputs whose voltages are kept; what is beyond is solved again. */
  private static final int MOST_KEPT = 20_000;

  private final Circuit circuit;

  /** By part and output: whether anything hangs on it, so that it matters what it drives. */
  private final boolean[][] loaded;

  private final Map<Drives, Optional<LogicSenses>> known = new HashMap<>();
  private Optional<OperatingPoint> near;
  LogicState state;

  LogicRun(Circuit circuit, LogicState state, Optional<OperatingPoint> near) {
    this.circuit = circuit;
    this.state = state;
    this.near = near;
    loaded = circuit.loaded();
  }

  Optional<OperatingPoint> near() {
    return near;
  }

  /** What came of stepping: settled, or the outputs that swing, or no solution at all. */
  record Result(boolean settled, boolean solved, Set<Swing> swings) {
    static final Result SETTLED = new Result(true, true, Set.of());
    static final Result UNSOLVED = new Result(false, false, Set.of());
  }

  /** An output of a part that never comes to rest. */
  record Swing(int part, int output) {}

  /**
   * Steps until nothing changes.
   *
   * @param fresh whether the supply has just come on, so that no clock has an edge yet
   */
  Result settle(boolean fresh) {
    Map<Object, Integer> seen = new LinkedHashMap<>();
    var past = new ArrayList<LogicState>();
    for (int step = 0; step < MOST_STEPS; step++) {
      Integer before = seen.putIfAbsent(state.key(), step);
      if (before != null) {
        return new Result(false, true, swings(past.subList(before, step)));
      }
      past.add(state);
      Optional<LogicState> next = next(fresh);
      if (next.isEmpty()) {
        return Result.UNSOLVED;
      }
      boolean same = next.get().same(state);
      state = next.get();
      if (same) {
        return Result.SETTLED;
      }
    }
    return new Result(false, true, swings(past));
  }

  private static Set<Swing> swings(List<LogicState> cycle) {
    var swings = new LinkedHashSet<Swing>();
    LogicState first = cycle.get(0);
    for (LogicState other : cycle) {
      for (int part = 0; part < first.outputs().length; part++) {
        for (int k = 0; k < first.outputs()[part].length; k++) {
          if (first.outputs()[part][k] != other.outputs()[part][k]) {
            swings.add(new Swing(part, k));
          }
        }
      }
    }
    return swings;
  }

  /** The state one step later; empty where the circuit has no solution. */
  private Optional<LogicState> next(boolean fresh) {
    Drives drives = state.drives().where(loaded);
    Optional<LogicSenses> low = senses(drives);
    Optional<LogicSenses> high = drives.undefined() ? senses(drives.doubting(true)) : low;
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    LogicState next = state.copy();
    for (int part = 0; part < circuit.mounted.length; part++) {
      for (Stamp.Gates gates : circuit.mounted[part].stamp().gates) {
        step(part, gates.logic(), low.get(), high.get(), next, fresh);
      }
    }
    return Optional.of(next);
  }

  private void step(
      int part, Logic logic, LogicSenses low, LogicSenses high, LogicState next, boolean fresh) {
    Level[] out = next.outputs()[part];
    Level[] in = next.inputs()[part];
    if (logic.dead(low.supply()[part]) && logic.dead(high.supply()[part])) {
      Arrays.fill(out, Level.OPEN);
      Arrays.fill(in, Level.OPEN);
      System.arraycopy(logic.start(), 0, next.memory()[part], 0, next.memory()[part].length);
      return;
    }
    for (int k = 0; k < in.length; k++) {
      in[k] = read(part, k, logic, low, high);
    }
    if (!logic.works(low.supply()[part]) || !logic.works(high.supply()[part])) {
      Arrays.fill(out, Level.UNDEFINED);
      return;
    }
    if (fresh) {
      logic.forget(next.memory()[part]);
    }
    logic.step(in, next.memory()[part], out);
  }

  private Level read(int part, int input, Logic logic, LogicSenses low, LogicSenses high) {
    if (low.undriven()[part][input] || high.undriven()[part][input]) {
      return logic.open(input);
    }
    Level before = state.inputs()[part][input];
    Level one = logic.read(input, low.volts()[part], low.supply()[part], before);
    Level other = logic.read(input, high.volts()[part], high.supply()[part], before);
    return one == other ? one : Level.UNDEFINED;
  }

  private Optional<LogicSenses> senses(Drives drives) {
    Optional<LogicSenses> before = known.get(drives);
    if (before != null) {
      return before;
    }
    Circuit driven = circuit.driving(drives.holding(circuit.drives.holds()));
    Outcome outcome =
        near.map(point -> OperatingPointSolver.solve(driven, point))
            .orElseGet(() -> OperatingPointSolver.solve(driven));
    Optional<LogicSenses> found = Optional.empty();
    if (outcome instanceof OperatingPoint point) {
      near = Optional.of(point);
      found = Optional.of(LogicSenses.of(driven, point));
    }
    if (known.size() < MOST_KEPT) {
      known.put(drives, found);
    }
    return found;
  }

  /** Whether an output that something hangs on is undefined. */
  boolean undefined() {
    return state.drives().where(loaded).undefined();
  }

  /** Whether the state as it is is one of rest. */
  boolean rests() {
    return next(false).filter(next -> next.same(state)).isPresent();
  }

  /** The voltages of the state as it is; empty where there are none. */
  Optional<LogicSenses> now() {
    return senses(state.drives());
  }
}
