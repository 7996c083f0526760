package org.holewise.drawing.route;

import java.util.Arrays;

/**
 * The cheapest way from what is laid of a strand to the nearest of its pins that is not joined yet:
 * A* (Hart, Nilsson, Raphael 1968, IEEE Transactions SSC 4) over node and way. Foreign wires are
 * crossed straight over straight; where asked, they may be run over at a price, to find out which
 * are in the way. Ties go to the lower state, so that the same question has the same answer.
 */
final class Search {
  private static final int BEND = 25;

  /** Into a pin other than along its lead: a bend that also hides where the lead ends. */
  private static final int SIDEWAYS = 36;

  private static final int CROSSING = 120;
  private static final int BRANCH = 12;
  private static final int FOURTH = 40;
  private static final int BESIDE = 12;
  private static final int OVER = 900;
  private static final int NEVER = Integer.MAX_VALUE;

  private final Grid grid;
  private final int[] cost;
  private final int[] before;
  private final int[] history;
  private long[] heap = new long[1024];
  private int heaped;
  private int[] targets = {};
  private int spent;
  private long looked;

  Search(Grid grid) {
    this.grid = grid;
    this.cost = new int[grid.blocked.length * 4];
    this.before = new int[grid.blocked.length * 4];
    this.history = new int[grid.blocked.length];
  }

  /** How many states were looked at so far: a measure of time that is the same everywhere. */
  long looked() {
    return looked;
  }

  /** What the last way cost. */
  int spent() {
    return spent;
  }

  void dislike(int node) {
    history[node] += 150;
  }

  /**
   * The way as states from the far end back to the start, or nothing.
   *
   * @param start nodes of the tree so far
   * @param goals nodes of pins to reach
   * @param over whether foreign wires may be run over
   */
  int[] way(int strand, int[] start, int[] goals, boolean over) {
    Arrays.fill(cost, NEVER);
    heaped = 0;
    targets = goals;
    for (int node : start) {
      for (int way = 0; way < 4; way++) {
        begin(strand, node, way, over);
      }
    }
    while (heaped > 0) {
      long top = pop();
      looked++;
      int state = (int) top;
      int priority = (int) (top >>> 32);
      int node = state >> 2;
      if (priority > cost[state] + estimate(node)) {
        continue;
      }
      if (goal(node)) {
        spent = cost[state];
        return trace(state);
      }
      for (int turn = 0; turn < 4; turn++) {
        if (turn != 2) {
          advance(strand, node, state & 3, (state + turn) & 3, state, over);
        }
      }
    }
    return new int[0];
  }

  private void begin(int strand, int node, int way, boolean over) {
    if (grid.arm(node, way) != Grid.FREE || foreign(node, strand)) {
      return;
    }
    int arms = grid.arms(node, strand);
    int first = arms == 0 ? 0 : BRANCH;
    if (arms >= 3) {
      first += FOURTH;
    } else if (arms == 1 && grid.arm(node, (way + 2) & 3) != strand) {
      first += BEND;
    }
    if (arms == 0 && !leadFrom(node, (way + 2) & 3)) {
      first += SIDEWAYS;
    }
    step(strand, node, way, first, -1 - node, over);
  }

  /** Whether the lead of a pin comes from that way: its body is there. */
  private boolean leadFrom(int node, int way) {
    return grid.blocked[node + grid.step(way)];
  }

  private boolean foreign(int node, int strand) {
    for (int way = 0; way < 4; way++) {
      int arm = grid.arm(node, way);
      if (arm != Grid.FREE && arm != strand) {
        return true;
      }
    }
    return false;
  }

  private void advance(int strand, int node, int way, int next, int state, boolean over) {
    boolean bend = next != way;
    if (bend && foreign(node, strand) && !over) {
      return;
    }
    step(strand, node, next, cost[state] + (bend ? BEND : 0), state, over);
  }

  private void step(int strand, int node, int way, int spent, int from, boolean over) {
    int to = node + grid.step(way);
    if (grid.blocked[to] && !goal(to) || grid.pin[to] != Grid.FREE && grid.pin[to] != strand) {
      return;
    }
    int arm = grid.arm(node, way);
    if (arm != Grid.FREE && !over || arm == strand || grid.touches(to, strand)) {
      return;
    }
    if (grid.pin[to] == strand && !goal(to)) {
      return;
    }
    int price = spent + Grid.STEP + grid.toll[to] + history[to];
    int crossing = crossing(strand, to, way);
    if (crossing > 0) {
      if (crossing == 1) {
        price += CROSSING;
      } else if (over) {
        price += OVER;
      } else {
        return;
      }
    }
    if (goal(to)) {
      price += leadFrom(to, way) ? 0 : SIDEWAYS;
    }
    price += beside(strand, to, way);
    int state = to * 4 + way;
    if (price < cost[state]) {
      cost[state] = price;
      before[state] = from;
      push((long) (price + estimate(to)) << 32 | state);
    }
  }

  /** 0 free, 1 straight over a straight wire, 2 anything worse. */
  private int crossing(int strand, int node, int way) {
    int aside = grid.arm(node, (way + 1) & 3);
    int other = grid.arm(node, (way + 3) & 3);
    int ahead = grid.arm(node, way);
    int behind = grid.arm(node, (way + 2) & 3);
    if (aside == 0 && other == 0 && ahead == 0 && behind == 0) {
      return 0;
    }
    boolean straight = aside == other && aside != strand && ahead == 0 && behind == 0;
    return straight && grid.pin[node] == Grid.FREE ? 1 : 2;
  }

  /** Running close along another wire. */
  private int beside(int strand, int node, int way) {
    int price = 0;
    for (int side = 1; side < 4; side += 2) {
      int next = node + grid.step((way + side) & 3);
      int c = next % grid.columns;
      int r = next / grid.columns;
      if (c > 0 && r > 0 && c < grid.columns - 1 && r < grid.rows - 1) {
        int arm = grid.arm(next, way);
        if (arm != Grid.FREE && arm != strand) {
          price += BESIDE;
        }
      }
    }
    return price;
  }

  private boolean goal(int node) {
    for (int target : targets) {
      if (target == node) {
        return true;
      }
    }
    return false;
  }

  private int estimate(int node) {
    int best = NEVER;
    int c = node % grid.columns;
    int r = node / grid.columns;
    for (int target : targets) {
      int far = Math.abs(target % grid.columns - c) + Math.abs(target / grid.columns - r);
      best = Math.min(best, far);
    }
    return best * Grid.STEP;
  }

  private int[] trace(int state) {
    int length = 0;
    for (int at = state; at >= 0; at = before[at]) {
      length++;
    }
    int[] way = new int[length];
    int i = 0;
    for (int at = state; at >= 0; at = before[at]) {
      way[i++] = at;
    }
    return way;
  }

  private void push(long entry) {
    if (heaped == heap.length) {
      heap = Arrays.copyOf(heap, 2 * heaped);
    }
    int at = heaped++;
    while (at > 0 && heap[(at - 1) / 2] > entry) {
      heap[at] = heap[(at - 1) / 2];
      at = (at - 1) / 2;
    }
    heap[at] = entry;
  }

  private long pop() {
    long top = heap[0];
    long last = heap[--heaped];
    int at = 0;
    while (2 * at + 1 < heaped) {
      int child = 2 * at + 1;
      if (child + 1 < heaped && heap[child + 1] < heap[child]) {
        child++;
      }
      if (heap[child] >= last) {
        break;
      }
      heap[at] = heap[child];
      at = child;
    }
    heap[at] = last;
    return top;
  }
}
