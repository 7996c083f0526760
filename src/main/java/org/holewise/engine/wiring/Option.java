package org.holewise.engine.wiring;

import java.util.Arrays;

/**
 * One way in which a part may take a place of the schematic.
 *
 * @param place number of the part whose place it takes
 * @param slot what it uses up: a place of its own, or one of the like parts of a chain
 * @param want wanted net of each of its pins
 */
record Option(int place, int slot, int[] want) {

  boolean same(Option other) {
    return place == other.place && slot == other.slot && Arrays.equals(want, other.want);
  }
}
