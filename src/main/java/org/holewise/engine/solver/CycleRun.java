package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.holewise.engine.part.Pin;

/**
 * Runs a circuit by its own clock until its state comes again, and watches a number on the way:
 * once while the clock is high and once while it is low.
 */
final class CycleRun {
  /** Pulses after which a circuit is taken not to come again. */
  private static final int MOST_PULSES = 4_096;

  private final Rhythm rhythm;
  private final LogicSolver solver;
  private final Pin clock;
  private final List<Double> high = new ArrayList<>();
  private final List<Double> low = new ArrayList<>();

  CycleRun(Circuit circuit, Rhythm rhythm) {
    this.rhythm = rhythm;
    clock = rhythm.clock(circuit);
    solver = LogicSolver.resting(circuit, rhythm);
  }

  Optional<Cycle> watch(ToDoubleFunction<OperatingPoint> number) {
    Optional<LogicSolver.Pulses> pulses = solver.pulses(clock);
    if (pulses.isEmpty()) {
      return Optional.empty();
    }
    Set<Object> seen = new HashSet<>();
    while (seen.size() < MOST_PULSES && seen.add(solver.state().key())) {
      if (!half(pulses.get(), true, number) || !half(pulses.get(), false, number)) {
        return Optional.empty();
      }
    }
    return Optional.of(cycle());
  }

  private boolean half(
      LogicSolver.Pulses pulses, boolean up, ToDoubleFunction<OperatingPoint> number) {
    Optional<OperatingPoint> point = pulses.half(up) ? pulses.point(up) : Optional.empty();
    point.ifPresent(at -> (up ? high : low).add(number.applyAsDouble(at)));
    return point.isPresent();
  }

  private Cycle cycle() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double sum = 0;
    double duty = rhythm.beats().get(0).seconds() / rhythm.period();
    for (int k = 0; k < high.size(); k++) {
      least = Math.min(least, Math.min(high.get(k), low.get(k)));
      most = Math.max(most, Math.max(high.get(k), low.get(k)));
      sum += (1 - duty) * high.get(k) + duty * low.get(k);
    }
    double middle = (least + most) / 2;
    int rises = 0;
    boolean before = low.get(low.size() - 1) > middle;
    for (int k = 0; k < high.size(); k++) {
      rises += !before && high.get(k) > middle ? 1 : 0;
      rises += high.get(k) <= middle && low.get(k) > middle ? 1 : 0;
      before = low.get(k) > middle;
    }
    double share = (double) rises / high.size();
    return new Cycle(share / rhythm.period(), share, least, most, sum / high.size());
  }
}
