package org.holewise.engine.netlist;

import java.util.List;
import org.holewise.engine.part.Pin;

/**
 * One net. Immutable.
 *
 * @param name the schematic's name, or for a build its first pin
 * @param pins in document order
 * @param strips numbers of the strips that make it (those without pins included), ascending; empty
 *     for a schematic's net and for a pin that is in no strip
 */
public record BuiltNet(String name, List<Pin> pins, List<Integer> strips) {
  public BuiltNet {
    pins = List.copyOf(pins);
    strips = List.copyOf(strips);
  }
}
