package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.solver.Edit;

/**
 * A record whose links go otherwise, as leads that are on other nets: so it goes together with any
 * other fault, and laws are written down once.
 */
final class Rewired {
  private static final int NONE = -1;

  private final AsBuilt own;
  private final AsBuilt other;
  private final int[] number;

  /**
   * @param key tells what has no net on the record from that of other faults
   */
  private Rewired(List<Pin> pins, AsBuilt own, AsBuilt other, int key) {
    this.own = own;
    this.other = other;
    number = new int[other.nets()];
    Arrays.fill(number, NONE);
    match(pins);
    for (int net = 0; net < number.length; net++) {
      if (number[net] == NONE) {
        number[net] = Layout.unnumbered(own, key) + net;
      }
    }
  }

  /** Of the nets that share pins, those that share most are the same, each of them once. */
  private void match(List<Pin> pins) {
    int[][] shared = new int[other.nets()][own.nets()];
    for (Pin pin : pins) {
      shared[other.net(pin)][own.net(pin)]++;
    }
    boolean[] taken = new boolean[own.nets()];
    for (int most = pins.size(); most > 0; most--) {
      for (int net = 0; net < number.length; net++) {
        for (int mine = 0; mine < taken.length; mine++) {
          if (shared[net][mine] == most && !taken[mine] && number[net] == NONE) {
            number[net] = mine;
            taken[mine] = true;
          }
        }
      }
    }
  }

  static Assembly of(Scene scene, Layout layout, AsBuilt other, int key) {
    List<Pin> pins = scene.exercise().pins();
    var rewired = new Rewired(pins, layout.nets(), other, key);
    var moves = new ArrayList<Edit>();
    for (Pin pin : pins) {
      int net = rewired.number[other.net(pin)];
      if (net != layout.nets().net(pin)) {
        moves.add(new Edit.Moved(pin, net));
      }
    }
    return scene
        .record()
        .on(scene.record().netlist(), hole -> rewired.net(other.netAt(hole)))
        .edited(moves.toArray(Edit[]::new));
  }

  private int net(int net) {
    return net < 0 ? net : number[net];
  }
}
