package org.holewise.engine.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.Cycle;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.LogicSolver;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.OperatingPointSolver;
import org.holewise.engine.solver.Outcome;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.Settled;
import org.jspecify.annotations.Nullable;

/**
 * An assembly solved as needed, once a condition. Not for several threads; the answers are the same
 * whatever the order of the questions, for a start near by only shortens the way.
 */
public final class Bench {
  /** Part of a deviation by which numbers are moved for a difference. */
  private static final double STEP = 0.1;

  private final Assembly assembly;
  private final @Nullable Bench near;
  private final double[] values;

  /** Whether undefined outputs and unconnected nets are taken to be high. */
  private final boolean doubt;

  private final Map<Key, State> states = new LinkedHashMap<>();
  private @Nullable Numbers numbers;

  /** What a circuit at rest depends on; a generator's frequency is not of it. */
  private record Key(String condition, int after) {}

  /** What is looked at while a clock runs: the current into a pin, or its voltage. */
  private record Watched(Pin pin, boolean volts) {
    double number(OperatingPoint point) {
      return volts ? point.volts(new Point.AtPin(pin)) : point.current(pin);
    }
  }

  /**
   * How often something happens (Hz).
   *
   * @param slopes by parameter of the condition's circuit
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Often(double value, double[] slopes) {}

  /** A condition's circuit with its logic at rest, and its outcome once somebody asked. */
  private static final class State {
    final Circuit circuit;
    final Optional<Settled> settled;
    final Map<Watched, Optional<Cycle>> cycles = new LinkedHashMap<>();
    final Map<List<Edit>, Optional<OperatingPoint>> metered = new LinkedHashMap<>();
    @Nullable Map<String, Double> shares;
    @Nullable Outcome outcome;

    State(Circuit circuit, Optional<Settled> settled) {
      this.circuit = circuit;
      this.settled = settled;
    }
  }

  private Bench(Assembly assembly, @Nullable Bench near, double[] values, boolean doubt) {
    this.assembly = assembly;
    this.near = near;
    this.values = values;
    this.doubt = doubt;
  }

  public static Bench of(Assembly assembly) {
    return new Bench(assembly, null, new double[0], false);
  }

  /** The same, its solutions sought from those of a bench that differs little. */
  public static Bench near(Bench start, Assembly assembly) {
    return new Bench(assembly, start, start.values, false);
  }

  /** The same assembly with other values of its parameters; its logic is taken to be the same. */
  public Bench with(double[] parameters) {
    var other = new Bench(assembly, this, parameters.clone(), doubt);
    other.numbers = numbers();
    return other;
  }

  /**
   * Whether something in a condition is anybody's guess: an output of logic is undefined, or a gate
   * hangs on a net that nothing drives. Then {@link #doubted} may as well be true.
   */
  public boolean doubtful(Condition condition) {
    return !doubt
        && (circuit(condition).doubtful()
            || point(condition).filter(OperatingPoint::uncontrolled).isPresent());
  }

  /** The same with all that is anybody's guess high instead of low. */
  public Bench doubted() {
    var other = new Bench(assembly, this, values, true);
    other.numbers = numbers;
    return other;
  }

  public Assembly assembly() {
    return assembly;
  }

  public Circuit circuit(Condition condition) {
    return state(condition).circuit;
  }

  /** Uncertain numbers of the assembly, whatever the condition. */
  public List<Parameter> parameters() {
    return numbers().parameters();
  }

  private Numbers numbers() {
    Numbers known = numbers;
    if (known == null) {
      known =
          near != null && sameNumbers(near)
              ? near.numbers()
              : Numbers.of(assembly, values.length > 0 ? assembly::circuit : this::unsolved);
      numbers = known;
    }
    return known;
  }

  private boolean sameNumbers(Bench other) {
    return values.length == 0
        && other.assembly.lendsTo(assembly)
        && assembly.exercise().conditions().stream()
            .allMatch(c -> circuit(c).sameParameters(other.circuit(c)));
  }

  /** A forecast in a condition, its slopes by the numbers of the assembly. */
  Forecast named(Condition condition, Forecast forecast) {
    return numbers().named(condition, forecast);
  }

  /** The operating point in a condition; empty where the circuit has no solution. */
  public Optional<OperatingPoint> point(Condition condition) {
    return outcome(condition) instanceof OperatingPoint point
        ? Optional.of(point)
        : Optional.empty();
  }

  /** The outcome in a condition, a reason where there is no solution. */
  public Outcome outcome(Condition condition) {
    State state = state(condition);
    Outcome known = state.outcome;
    if (known == null) {
      known = solved(state.circuit, condition);
      state.outcome = known;
    }
    return known;
  }

  /** The operating point with meters connected. */
  Optional<OperatingPoint> point(Condition condition, List<Edit> meters) {
    Map<List<Edit>, Optional<OperatingPoint>> known = state(condition).metered;
    Optional<OperatingPoint> point = known.get(meters);
    if (point == null) {
      point = metered(condition, meters);
      known.put(meters, point);
    }
    return point;
  }

  private Optional<OperatingPoint> metered(Condition condition, List<Edit> meters) {
    return outcome(condition) instanceof OperatingPoint start
            && OperatingPointSolver.solve(circuit(condition).with(meters), start)
                instanceof OperatingPoint point
        ? Optional.of(point)
        : Optional.empty();
  }

  private State state(Condition condition) {
    var key = new Key(condition.name(), condition.after());
    State known = states.get(key);
    if (known == null) {
      known =
          near != null && near.assembly == assembly
              ? revalued(near.state(condition), condition)
              : settled(valued(unsolved(condition), condition), condition);
      states.put(key, known);
    }
    return known;
  }

  private Circuit valued(Circuit circuit, Condition condition) {
    return values.length > 0 ? circuit.at(numbers().in(condition, values)) : circuit;
  }

  /** That of a bench that differs in values alone, its logic taken to be the same. */
  private State revalued(State like, Condition condition) {
    Circuit circuit = valued(like.circuit, condition);
    return new State(doubt ? circuit.doubted() : circuit, like.settled);
  }

  private State settled(Circuit circuit, Condition condition) {
    if (!circuit.logical()) {
      return new State(doubt ? circuit.doubted() : circuit, Optional.empty());
    }
    Settled settled = settle(circuit, condition);
    return new State(settled.circuit(), Optional.of(settled));
  }

  private Settled settle(Circuit circuit, Condition condition) {
    Optional<Pin> clock =
        condition
            .clock()
            .filter(pin -> condition.after() > 0)
            .map(pin -> Clocking.source(assembly, pin));
    int pulses = clock.map(pin -> Clocking.pulses(assembly, pin, condition.after())).orElse(0);
    Optional<Settled> like = near == null ? Optional.empty() : near.settled(condition);
    if (like.isPresent() && pulses == condition.after()) {
      return LogicSolver.settle(circuit, clock, pulses, like.get());
    }
    return clock
        .map(pin -> LogicSolver.settle(circuit, pin, pulses))
        .orElseGet(() -> LogicSolver.settle(circuit));
  }

  /**
   * What the current into a pin does while a circuit's own clock runs; empty where none does, or
   * where pulses are counted. A bench that differs in values alone runs as the one it differs from.
   */
  Optional<Cycle> cycle(Condition condition, Pin pin) {
    return cycle(condition, new Watched(pin, false));
  }

  private Optional<Cycle> cycle(Condition condition, Watched watched) {
    Optional<Settled> own = settled(condition).filter(settled -> settled.clock().isPresent());
    if (own.isEmpty() || condition.after() > 0) {
      return Optional.empty();
    }
    if (near != null
        && (near.assembly == assembly || watched.volts() && near.runs(own.get(), condition))) {
      return near.cycle(condition, watched);
    }
    State state = state(condition);
    return state.cycles.computeIfAbsent(
        watched, at -> LogicSolver.cycle(state.circuit.undriven(), own.get(), at::number));
  }

  /** Whether its logic goes the same way, so that its outputs swing as often in a period. */
  private boolean runs(Settled other, Condition condition) {
    return settled(condition).filter(own -> own.way() == other.way()).isPresent();
  }

  /**
   * How often a pin swings by the circuit's own clock; empty where none runs.
   *
   * @param leastPeak a swing below this is none (V)
   */
  Optional<Often> frequency(Condition condition, Pin pin, double leastPeak) {
    return cycle(condition, new Watched(pin, true))
        .map(cycle -> (cycle.most() - cycle.least()) / 2 > leastPeak ? cycle.rises() : 0)
        .map(rises -> often(condition, rises));
  }

  private Often often(Condition condition, double rises) {
    List<Parameter> parameters = circuit(condition).parameters();
    double hertz = rises == 0 ? 0 : rises * clock(state(condition), circuit(condition)).orElse(0);
    double[] slopes = new double[parameters.size()];
    Map<String, Double> shares = hertz == 0 ? Map.of() : shares(condition);
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = hertz * shares.getOrDefault(parameters.get(k).name(), 0.0);
    }
    return new Often(hertz, slopes);
  }

  private static OptionalDouble clock(State state, Circuit circuit) {
    return LogicSolver.frequency(circuit.undriven(), state.settled.orElseThrow());
  }

  /**
   * Slopes of the logarithm of the clock's frequency by name of parameter, by differences. Those of
   * a bench that differs little are as good, for shares hardly change where values do.
   */
  private Map<String, Double> shares(Condition condition) {
    if (near != null && near.settled(condition).flatMap(Settled::clock).isPresent()) {
      return near.shares(condition);
    }
    State state = state(condition);
    Map<String, Double> known = state.shares;
    if (known == null) {
      known = differences(state);
      state.shares = known;
    }
    return known;
  }

  private static Map<String, Double> differences(State state) {
    Circuit circuit = state.circuit;
    List<Parameter> parameters = circuit.parameters();
    Map<String, Double> slopes = new LinkedHashMap<>();
    for (int k = 0; k < parameters.size(); k++) {
      double step = STEP * parameters.get(k).deviation();
      if (step == 0) {
        continue;
      }
      OptionalDouble above = clock(state, moved(circuit, k, step));
      OptionalDouble below = clock(state, moved(circuit, k, -step));
      if (above.isPresent() && below.isPresent()) {
        slopes.put(
            parameters.get(k).name(),
            StrictMath.log(above.getAsDouble() / below.getAsDouble()) / (2 * step));
      }
    }
    return slopes;
  }

  private static Circuit moved(Circuit circuit, int k, double by) {
    double[] values = circuit.values();
    values[k] += by;
    return circuit.at(values);
  }

  /** How its logic came to rest in a condition; empty where it has none. */
  public Optional<Settled> settled(Condition condition) {
    return state(condition).settled;
  }

  /** A bench near by lends its parts' laws, written down once. */
  private Circuit unsolved(Condition condition) {
    return near != null && near.assembly.lendsTo(assembly)
        ? near.assembly.lent(near.circuit(condition), assembly, condition)
        : assembly.circuit(condition);
  }

  private Outcome solved(Circuit circuit, Condition condition) {
    return near != null && near.outcome(condition) instanceof OperatingPoint start
        ? OperatingPointSolver.solve(circuit, start)
        : OperatingPointSolver.solve(circuit);
  }
}
