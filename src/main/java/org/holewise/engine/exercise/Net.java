package org.holewise.engine.exercise;

import java.util.List;
import org.holewise.engine.part.Pin;

/** A net of the schematic: its name and the pins that it joins. */
public record Net(String name, List<Pin> pins) {
  public Net {
    pins = List.copyOf(pins);
  }
}
