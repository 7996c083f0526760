package org.holewise.engine.solver;

import java.util.List;

/**
 * There is no operating point.
 *
 * @param nets numbers of the nets concerned, ascending; empty where none can be named
 */
public record Unsolvable(Why why, List<Integer> nets) implements Outcome {

  /** Why there is none. */
  public enum Why {
    /** Ideal sources of voltage in a loop, or one whose ends are joined. */
    SOURCE_LOOP,
    /** A current is fed in where nothing can take it. */
    CUT_SET,
    /** The search did not end; a defect of the solver, not of the circuit. */
    NOT_CONVERGED
  }
}
