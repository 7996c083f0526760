package org.holewise.engine.netlist;

import java.util.List;
import java.util.Map;
import org.holewise.engine.part.Pin;

/**
 * Nets and the pins on them. Every pin of every part is on exactly one net; a pin that touches
 * nothing has a net of its own. Pins that are twins inside a part may be on different nets here:
 * the part's law joins them. Immutable.
 *
 * @param nets in a fixed order; a net's number is its place in this list
 * @param netOf number of each pin's net
 */
public record Netlist(List<BuiltNet> nets, Map<Pin, Integer> netOf) {

  public int net(Pin pin) {
    Integer net = netOf.get(pin);
    if (net == null) {
      throw new IllegalArgumentException("no such pin: " + pin);
    }
    return net;
  }
}
