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
    int[] oneLabel = new int[way.strips.used.length];
    Arrays.fill(oneLabel, -1);
    for (int strip : way.strips.used) {
      if (full[strip] >= 0) {
        oneLabel[way.linked.island[strip]] = full[strip];
      }
    }
    for (int strip : way.strips.used) {
      if (full[strip] < 0 && way.linked.netsAround(strip) == 1) {
        full[strip] = oneLabel[way.linked.island[strip]];
      }
    }
    open =
        Arrays.stream(way.strips.used)
            .filter(strip -> full[strip] < 0 && way.linked.netsAround(strip) > 1)
            .toArray();
  }

  /**
   * Shows each way to join what is so labelled within the bound; false as soon as one was enough.
   */
  boolean each(Predicate<Joints> more) {
    return from(0, cuts(), more);
  }

  private boolean from(int i, int cuts, Predicate<Joints> more) {
    if (way.moved() + cuts > way.bound()) {
      return true;
    }
    if (!way.spend()) {
      return false;
    }
    if (i == open.length) {
      var joints = new Joints(way, full.clone());
      return joints.cost > way.bound() || more.test(joints);
    }
    int strip = open[i];
    boolean goOn = true;
    int[] like = like(strip);
    int links = Arrays.stream(like).sum();
    for (int most = links; most >= 0 && goOn; most--) {
      for (int net = 0; net < like.length && goOn; net++) {
        if (like[net] == most && way.linked.has(strip, net)) {
          full[strip] = net;
          goOn = from(i + 1, cuts + links - most, more);
        }
      }
    }
    full[strip] = -1;
    return goOn;
  }

  /** How many links run from a strip to strips of each net. */
  private int[] like(int strip) {
    int[] like = new int[way.linked.nets];
    int[] end = way.layout.end();
    for (int i = 0; i < end.length; i++) {
      int other = end[i ^ 1];
      if (end[i] == strip && other >= 0 && full[other] >= 0) {
        like[full[other]]++;
      }
    }
    return like;
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
