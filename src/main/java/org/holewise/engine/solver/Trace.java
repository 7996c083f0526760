package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Pin;

/**
 * States in which a circuit's logic came to rest on its way, to be tried on a circuit that differs
 * little: one that rests in all of them went the same way. Not a proof, since a difference may show
 * only between them; the last states at rest and at either hold of the clock are always among them.
 *
 * @param held high or low for the clock, or not at all
 */
record Trace(List<Sample> samples, Optional<Rhythm> rhythm) {
  private static final int MOST = 4;

  record Sample(Optional<Boolean> held, LogicState state) {}

  static Trace of(List<Sample> way, Sample last, Optional<Rhythm> rhythm) {
    var samples = new ArrayList<Sample>();
    samples.add(last);
    way.stream().skip(Math.max(0, way.size() - MOST)).forEach(samples::add);
    return new Trace(List.copyOf(samples), rhythm);
  }

  /** Whether another circuit rests in every one of the states. */
  boolean holds(Circuit other, Optional<Pin> clock) {
    Circuit base = LogicSolver.holding(other, rhythm);
    Optional<OperatingPoint> near = Optional.empty();
    Optional<Clock> wire = Optional.empty();
    for (Sample sample : samples) {
      boolean holds = sample.held().isPresent();
      if (holds && wire.isEmpty()) {
        return false;
      }
      Circuit circuit = holds ? wire.get().held(sample.held().get()) : base;
      var run = new LogicRun(circuit, sample.state().copy(), near);
      if (!run.rests()) {
        return false;
      }
      near = run.near();
      if (wire.isEmpty() && clock.isPresent()) {
        wire = Clock.of(base, clock.get(), run);
      }
    }
    return true;
  }
}
