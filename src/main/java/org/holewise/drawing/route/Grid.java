package org.holewise.drawing.route;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;

/**
 * The grid of 10 on which wires run: which nodes are blocked, which nets' pins and wires are where,
 * and what it costs to come near things. A strand is a net, or a part of one that is joined apart.
 */
final class Grid {
  static final int STEP = 10;

  /** No strand. */
  static final int FREE = 0;

  /** A pin that is on no net. */
  static final int DEAD = -1;

  final int columns;
  final int rows;
  private final int x;
  private final int y;
  final boolean[] blocked;
  final int[] pin;
  final int[] right;
  final int[] down;
  final int[] toll;

  Grid(Area area) {
    this.x = (int) Math.floor(area.x() / STEP) * STEP;
    this.y = (int) Math.floor(area.y() / STEP) * STEP;
    this.columns = (int) Math.ceil((area.right() - x) / STEP) + 1;
    this.rows = (int) Math.ceil((area.bottom() - y) / STEP) + 1;
    int nodes = columns * rows;
    this.blocked = new boolean[nodes];
    this.pin = new int[nodes];
    this.right = new int[nodes];
    this.down = new int[nodes];
    this.toll = new int[nodes];
    for (int node = 0; node < nodes; node++) {
      int c = node % columns;
      int r = node / columns;
      if (c == 0 || r == 0 || c == columns - 1 || r == rows - 1) {
        blocked[node] = true;
      }
    }
  }

  int node(Point point) {
    return (point.y() - y) / STEP * columns + (point.x() - x) / STEP;
  }

  Point point(int node) {
    return new Point(x + node % columns * STEP, y + node / columns * STEP);
  }

  boolean holds(Point point) {
    int c = (point.x() - x) / STEP;
    int r = (point.y() - y) / STEP;
    return c > 0 && r > 0 && c < columns - 1 && r < rows - 1;
  }

  /** Blocks what an area covers, its edge included. */
  void block(Area area) {
    each(area, node -> blocked[node] = true);
  }

  void charge(Area area, int cost) {
    each(area, node -> toll[node] += cost);
  }

  private interface Each {
    void node(int node);
  }

  private void each(Area area, Each each) {
    int c1 = Math.max(0, (int) Math.ceil((area.x() - x) / STEP));
    int c2 = Math.min(columns - 1, (int) Math.floor((area.right() - x) / STEP));
    int r1 = Math.max(0, (int) Math.ceil((area.y() - y) / STEP));
    int r2 = Math.min(rows - 1, (int) Math.floor((area.bottom() - y) / STEP));
    for (int r = r1; r <= r2; r++) {
      for (int c = c1; c <= c2; c++) {
        each.node(r * columns + c);
      }
    }
  }

  /** Ways: 0 right, 1 down, 2 left, 3 up. */
  int step(int way) {
    return switch (way) {
      case 0 -> 1;
      case 1 -> columns;
      case 2 -> -1;
      default -> -columns;
    };
  }

  /** The strand of the wire that leaves a node that way. */
  int arm(int node, int way) {
    return switch (way) {
      case 0 -> right[node];
      case 1 -> down[node];
      case 2 -> right[node - 1];
      default -> down[node - columns];
    };
  }

  void lay(int node, int way, int strand) {
    switch (way) {
      case 0 -> right[node] = strand;
      case 1 -> down[node] = strand;
      case 2 -> right[node - 1] = strand;
      default -> down[node - columns] = strand;
    }
  }

  boolean touches(int node, int strand) {
    return right[node] == strand
        || down[node] == strand
        || right[node - 1] == strand
        || down[node - columns] == strand;
  }

  boolean wired(int node) {
    return right[node] != FREE
        || down[node] != FREE
        || right[node - 1] != FREE
        || down[node - columns] != FREE;
  }

  int arms(int node, int strand) {
    int arms = 0;
    for (int way = 0; way < 4; way++) {
      if (arm(node, way) == strand) {
        arms++;
      }
    }
    return arms;
  }

  void rip(int strand) {
    for (int node = 0; node < right.length; node++) {
      if (right[node] == strand) {
        right[node] = FREE;
      }
      if (down[node] == strand) {
        down[node] = FREE;
      }
    }
  }
}
