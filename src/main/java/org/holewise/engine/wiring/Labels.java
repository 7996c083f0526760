package org.holewise.engine.wiring;

import java.util.Arrays;
import java.util.function.Predicate;

/**
 * Labels the strips in which no pin stays, once all parts are decided: where all that links join
 * has one label, with that; else with every combination that keeps to the bound.
 */
final class Labels {
  private final Search way;
  private final int[] full;
  private final int[] open;

  Labels(Search way) {
    this.way = way;
    full = way.label.clone();
    int[] oneLabel = new int[way.used.length];
    Arrays.fill(oneLabel, -1);
    for (int strip : way.used) {
      if (full[strip] >= 0) {
        oneLabel[way.linked.island[strip]] = full[strip];
      }
    }
    for (int strip : way.used) {
      if (full[strip] < 0 && way.linked.netsAround(strip) == 1) {
        full[strip] = oneLabel[way.linked.island[strip]];
      }
    }
    open =
        Arrays.stream(way.used)
            .filter(strip -> full[strip] < 0 && way.linked.netsAround(strip) > 1)
            .toArray();
  }

  /**
   * Shows each way to join what is so labelled within the bound; false as soon as one was enough.
   */
  boolean each(Predicate<Joints> more) {
    return from(0, more);
  }

  private boolean from(int i, Predicate<Joints> more) {
    if (way.moved() + cuts() > way.bound()) {
      return true;
    }
    if (i == open.length) {
      var joints = new Joints(way, full.clone());
      return joints.cost > way.bound() || more.test(joints);
    }
    int strip = open[i];
    boolean goOn = true;
    for (int net = 0; net < way.linked.nets && goOn; net++) {
      if (way.linked.has(strip, net)) {
        full[strip] = net;
        goOn = from(i + 1, more);
      }
    }
    full[strip] = -1;
    return goOn;
  }

  private int cuts() {
    int[] end = way.layout.end();
    int cuts = 0;
    for (int i = 0; i < end.length; i += 2) {
      if (Joints.cut(full, end[i], end[i + 1])) {
        cuts++;
      }
    }
    return cuts;
  }
}
