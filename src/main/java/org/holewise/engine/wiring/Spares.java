package org.holewise.engine.wiring;

import java.util.stream.IntStream;
import org.holewise.engine.netlist.DisjointSets;

/**
 * Links that change no net: without them the same pins are joined. Where a repair will yet place a
 * part, a link to a strip without pins counts as one that its leads may use.
 */
final class Spares {
  private Spares() {}

  /** Whether a layout has a link that changes no net. */
  static boolean any(Terminals t, Layout layout) {
    return last(t, layout) >= 0;
  }

  /** The last link that changes no net and that no repair has set; -1 where there is none. */
  static int last(Terminals t, Layout layout) {
    for (int link = layout.links() - 1; link >= 0; link--) {
      int from = layout.end()[2 * link];
      int to = layout.end()[2 * link + 1];
      boolean gone = from < 0 && to < 0 && layout.fixedEnd()[2 * link];
      if (!gone && spare(t, layout, link, from, to)) {
        return link;
      }
    }
    return -1;
  }

  /** How many links go if each that changes no net is removed in turn, from the last on. */
  static int count(Terminals t, Layout layout) {
    Layout left = layout;
    int count = 0;
    for (int link = last(t, left); link >= 0; link = last(t, left)) {
      left = left.after(new Fix.Remove(link));
      count++;
    }
    return count;
  }

  private static boolean spare(Terminals t, Layout layout, int link, int from, int to) {
    if (from < 0 || to < 0) {
      return true;
    }
    var sets = without(t, layout, link);
    return sets.find(from) == sets.find(to) || bare(layout, sets, from) || bare(layout, sets, to);
  }

  private static boolean bare(Layout layout, DisjointSets sets, int strip) {
    return !placesParts(layout)
        && IntStream.of(layout.pin())
            .noneMatch(pin -> pin >= 0 && sets.find(pin) == sets.find(strip));
  }

  private static boolean placesParts(Layout layout) {
    for (Layout.Presence part : layout.parts()) {
      if (part == Layout.Presence.GIVEN) {
        return true;
      }
    }
    return false;
  }

  private static DisjointSets without(Terminals t, Layout layout, int link) {
    var sets = new DisjointSets(layout.strips());
    int[] end = layout.end();
    for (int i = 0; i < end.length; i += 2) {
      if (i != 2 * link && end[i] >= 0 && end[i + 1] >= 0) {
        sets.union(end[i], end[i + 1]);
      }
    }
    for (int[] twins : t.pinsOf) {
      int first = -1;
      for (int pin : twins) {
        int strip = layout.pin()[pin];
        first = first < 0 ? strip : first;
        if (strip >= 0) {
          sets.union(first, strip);
        }
      }
    }
    return sets;
  }
}
