package org.holewise.engine.solver;

import org.holewise.engine.part.Pin;

/** A point of a circuit that a probe can reach. */
public sealed interface Point {
  /** The bare metal of a lead. */
  record AtPin(Pin pin) implements Point {}

  /** A net's strip, by number. */
  record AtNet(int net) implements Point {}
}
