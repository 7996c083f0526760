package org.holewise.engine.solver;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Pin;

/**
 * A circuit whose logic has come to rest, or what keeps it from that. Immutable.
 *
 * @param circuit the circuit, its outputs driving as they do then
 * @param swinging outputs that never come to rest
 * @param clashes pairs of outputs on one wire that drive against each other
 * @param clock the output that makes a clock of the circuit's own; it is held low here
 * @param way how it came to rest
 */
public record Settled(
    Circuit circuit, Set<Pin> swinging, List<Clash> clashes, Optional<Pin> clock, Way way) {

  /** How it came to rest, for {@link LogicSolver#settle(Circuit, Optional, int, Settled)}. */
  public static final class Way {
    final Trace trace;

    Way(Trace trace) {
      this.trace = trace;
    }
  }

  /** Two outputs on one wire, the first high and the second low. */
  public record Clash(Pin high, Pin low) {}

  /** What each output of a part drives, in the order of its logic; empty for other parts. */
  public List<Level> outputs(String ref) {
    int part = circuit.plan.part(ref);
    return part < circuit.drives.levels().size() ? circuit.drives.levels().get(part) : List.of();
  }
}
