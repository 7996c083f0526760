package org.holewise.drawing.route;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.holewise.drawing.sheet.Point;

/**
 * Lays all strands. Each grows from one end, or from its line, to the nearest end next. One that
 * finds no way shows which wires are in it; those are taken up, what they ran over is disliked from
 * then on, and they are laid anew after it. Rounds are bounded.
 */
final class Router {
  private static final int MOST_RIPS = 60;

  /** States looked at beyond which nothing is taken up any more; some tenths of a second. */
  private static final long MOST_LOOKED = 1_000_000;

  /** Of strands with more ends only one start is tried. */
  private static final int MOST_STARTS = 6;

  private final Grid grid;
  private final List<Strand> strands;
  private final Search search;
  private final List<Integer> failed = new ArrayList<>();

  Router(Grid grid, List<Strand> strands) {
    this.grid = grid;
    this.strands = strands;
    this.search = new Search(grid);
    for (int i = 0; i < strands.size(); i++) {
      for (Point end : strands.get(i).ends()) {
        grid.pin[grid.node(end)] = i + 1;
      }
    }
    run();
  }

  /** Strands without a way. */
  List<Integer> failed() {
    return failed;
  }

  /** States looked at. */
  long looked() {
    return search.looked();
  }

  private void run() {
    var queue = new ArrayDeque<Integer>();
    var order = new ArrayList<Integer>();
    for (int i = 0; i < strands.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt(this::span).thenComparingInt(i -> i));
    queue.addAll(order);
    int rips = 0;
    while (!queue.isEmpty()) {
      int strand = queue.remove();
      grid.rip(strand + 1);
      var ripped = new ArrayList<Integer>();
      if (!lay(strand, rips < MOST_RIPS && search.looked() < MOST_LOOKED, ripped)) {
        grid.rip(strand + 1);
        failed.add(strand);
      }
      rips += ripped.size();
      queue.addAll(ripped);
    }
  }

  /** Lines first, then the short ones. */
  private int span(int strand) {
    Strand s = strands.get(strand);
    if (s.line().isPresent()) {
      return -1;
    }
    int x1 = Integer.MAX_VALUE;
    int x2 = Integer.MIN_VALUE;
    int y1 = Integer.MAX_VALUE;
    int y2 = Integer.MIN_VALUE;
    for (Point end : s.ends()) {
      x1 = Math.min(x1, end.x());
      x2 = Math.max(x2, end.x());
      y1 = Math.min(y1, end.y());
      y2 = Math.max(y2, end.y());
    }
    return x2 - x1 + y2 - y1;
  }

  private boolean lay(int strand, boolean mayRip, List<Integer> ripped) {
    int ends = strands.get(strand).ends().size();
    if (strands.get(strand).line().isPresent() || ends < 3 || ends > MOST_STARTS || !mayRip) {
      return lay(strand, 0, mayRip, ripped) >= 0;
    }
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int start = 0; start < ends; start++) {
      int cost = lay(strand, start, false, ripped);
      grid.rip(strand + 1);
      if (cost >= 0 && cost < least) {
        least = cost;
        best = start;
      }
    }
    return lay(strand, best, mayRip, ripped) >= 0;
  }

  /** Grows a strand from one of its ends; answers what it costs, less than 0 where it failed. */
  private int lay(int strand, int start, boolean mayRip, List<Integer> ripped) {
    Strand s = strands.get(strand);
    var tree = new ArrayList<Integer>();
    var open = new ArrayList<Integer>();
    s.ends().forEach(end -> open.add(grid.node(end)));
    if (s.line().isPresent()) {
      line(strand, tree);
    }
    drop(strand, tree);
    open.removeIf(tree::contains);
    if (tree.isEmpty()) {
      tree.add(open.remove(start));
    }
    int cost = 0;
    while (!open.isEmpty()) {
      int[] way = search.way(strand + 1, ints(tree), ints(open), false);
      if (way.length == 0 && mayRip) {
        way = search.way(strand + 1, ints(tree), ints(open), true);
        take(way, strand + 1, ripped);
      }
      if (way.length == 0) {
        return -1;
      }
      cost += search.spent();
      put(way, strand + 1, tree);
      open.removeIf(tree::contains);
    }
    return cost;
  }

  private static int[] ints(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }

  /** A straight line over all its ends' columns; loose ends are trimmed at last. */
  private void line(int strand, List<Integer> tree) {
    Strand s = strands.get(strand);
    int y = s.line().getAsInt();
    int x1 = s.ends().stream().mapToInt(Point::x).min().orElse(0);
    int x2 = s.ends().stream().mapToInt(Point::x).max().orElse(0);
    int node = grid.node(new Point(x1, y));
    int end = grid.node(new Point(x2, y));
    while (node <= end) {
      if (grid.blocked[node] || grid.pin[node] != Grid.FREE && grid.pin[node] != strand + 1) {
        if (!tree.isEmpty()) {
          return;
        }
      } else {
        if (!tree.isEmpty()) {
          grid.lay(node - 1, 0, strand + 1);
        }
        tree.add(node);
      }
      node++;
    }
  }

  /** Ends that face the line and see it are joined to it straight. */
  private void drop(int strand, List<Integer> tree) {
    Strand s = strands.get(strand);
    if (tree.isEmpty()) {
      return;
    }
    for (Point end : s.ends()) {
      int way = end.y() > s.line().getAsInt() ? 3 : 1;
      int node = grid.node(end);
      int goal = grid.node(new Point(end.x(), s.line().getAsInt()));
      if (tree.contains(goal) && sees(strand, node, goal, way)) {
        for (int at = node; at != goal; at += grid.step(way)) {
          grid.lay(at, way, strand + 1);
          tree.add(at);
        }
      }
    }
  }

  private boolean sees(int strand, int node, int goal, int way) {
    for (int at = node; at != goal; at += grid.step(way)) {
      int next = at + grid.step(way);
      boolean foreign = grid.pin[next] != Grid.FREE && grid.pin[next] != strand + 1;
      if (grid.blocked[next] || foreign || grid.wired(next) && next != goal) {
        return false;
      }
    }
    return true;
  }

  /** Takes up the wires that a way runs over. */
  private void take(int[] way, int strand, List<Integer> ripped) {
    for (int state : way) {
      int node = state >> 2;
      for (int arm = 0; arm < 4; arm++) {
        int other = grid.arm(node, arm);
        if (other != Grid.FREE && other != strand && bad(way, node, other)) {
          search.dislike(node);
          grid.rip(other);
          ripped.add(other - 1);
        }
      }
    }
  }

  /** Whether a way does more at a node than cross another wire straight. */
  private boolean bad(int[] way, int node, int other) {
    for (int i = 0; i < way.length; i++) {
      if (way[i] >> 2 == node) {
        int in = way[i] & 3;
        boolean straight =
            i > 0
                && (way[i - 1] & 3) == in
                && grid.arm(node, (in + 1) & 3) == other
                && grid.arm(node, (in + 3) & 3) == other
                && grid.arm(node, in) == Grid.FREE
                && grid.arm(node, (in + 2) & 3) == Grid.FREE;
        if (!straight) {
          return true;
        }
      }
    }
    return false;
  }

  private void put(int[] way, int strand, List<Integer> tree) {
    for (int state : way) {
      int node = state >> 2;
      int back = (state + 2) & 3;
      grid.lay(node, back, strand);
      tree.add(node);
    }
  }
}
