package org.holewise.engine.exercise;

import org.holewise.engine.board.Hole;
import org.holewise.engine.part.Pin;

/** Where a meter touches: the bare metal of a lead, or the strip of a hole. */
public sealed interface Probe {
  record AtPin(Pin pin) implements Probe {
    @Override
    public String toString() {
      return pin.toString();
    }
  }

  record AtHole(Hole hole) implements Probe {
    @Override
    public String toString() {
      return hole.toString();
    }
  }

  static Probe at(Pin pin) {
    return new AtPin(pin);
  }

  static Probe at(Hole hole) {
    return new AtHole(hole);
  }
}
