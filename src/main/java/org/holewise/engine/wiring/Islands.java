package org.holewise.engine.wiring;

import java.util.Arrays;
import org.holewise.engine.netlist.DisjointSets;

/**
 * Counts, for islands of strips, the wanted nets that have a strip labelled in each. An island is
 * what links alone join, or links and twins.
 *
 * <p>{@code pairs} counts pairs of island and net, {@code islands} and {@code nets} those that are
 * in a pair. At least {@code pairs − islands} joints must be cut and at least {@code pairs − nets}
 * made, whatever is labelled later.
 */
final class Islands {
  final int[] island;
  final int nets;
  private final int[] labelled;
  private final int[] netsIn;
  private final int[] islandsOf;
  private int pairs;
  private int islandsUsed;
  private int netsUsed;

  Islands(DisjointSets sets, int[] used, int strips, int nets) {
    this.nets = nets;
    island = new int[strips];
    int[] number = new int[strips];
    Arrays.fill(number, -1);
    int next = 0;
    for (int strip : used) {
      int root = sets.find(strip);
      if (number[root] < 0) {
        number[root] = next++;
      }
      island[strip] = number[root];
    }
    labelled = new int[next * nets];
    netsIn = new int[next];
    islandsOf = new int[nets];
  }

  void label(int strip, int net) {
    if (labelled[island[strip] * nets + net]++ == 0) {
      pairs++;
      islandsUsed += netsIn[island[strip]]++ == 0 ? 1 : 0;
      netsUsed += islandsOf[net]++ == 0 ? 1 : 0;
    }
  }

  void unlabel(int strip, int net) {
    if (--labelled[island[strip] * nets + net] == 0) {
      pairs--;
      islandsUsed -= --netsIn[island[strip]] == 0 ? 1 : 0;
      netsUsed -= --islandsOf[net] == 0 ? 1 : 0;
    }
  }

  int toCut() {
    return pairs - islandsUsed;
  }

  int toJoin() {
    return pairs - netsUsed;
  }

  /** How many nets have strips in the island of a strip. */
  int netsAround(int strip) {
    return netsIn[island[strip]];
  }

  boolean has(int strip, int net) {
    return labelled[island[strip] * nets + net] > 0;
  }
}
