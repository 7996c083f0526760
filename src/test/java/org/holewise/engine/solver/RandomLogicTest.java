package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Random networks of gates against a simulator that knows nothing of volts: three values, every
 * gate one step at a time, written apart from the engine's.
 */
class RandomLogicTest {
  private static final int NETWORKS = Integer.getInteger("holewise.logic.draws", 1_000);
  private static final String[] KINDS = {"7400", "7402", "7408", "7432", "7486"};
  private static final int[][] PLACES = {{0, 1, 2}, {3, 4, 5}, {9, 8, 7}, {12, 11, 10}};
  private static final int[][] NOR_PLACES = {{1, 2, 0}, {4, 5, 3}, {7, 8, 9}, {10, 11, 12}};

  /** A gate: what it does, and the wires of its inputs and output. */
  private record Gate(String kind, int a, int b, int out) {
    /** 0, 1 or 2 for unknown; worked out by trying every value of what is unknown. */
    int make(int[] wires) {
      Set<Integer> all = new LinkedHashSet<>();
      for (int a : wires[this.a] == 2 ? new int[] {0, 1} : new int[] {wires[this.a]}) {
        for (int b : wires[this.b] == 2 ? new int[] {0, 1} : new int[] {wires[this.b]}) {
          all.add(make(a, b));
        }
      }
      return all.size() == 1 ? all.iterator().next() : 2;
    }

    private int make(int a, int b) {
      return switch (kind) {
        case "7400" -> 1 - (a & b);
        case "7402" -> 1 - (a | b);
        case "7408" -> a & b;
        case "7432" -> a | b;
        default -> a ^ b;
      };
    }
  }

  /** Wires: low, high, one that nothing drives, then the outputs of the gates. */
  private static int[] simulated(List<Gate> gates, int wires) {
    int[] now = new int[wires];
    Arrays.fill(now, 2);
    now[0] = 0;
    now[1] = 1;
    for (int step = 0; step < 4 * gates.size() + 4; step++) {
      int[] next = now.clone();
      for (Gate gate : gates) {
        next[gate.out] = gate.make(now);
      }
      now = next;
    }
    return now;
  }

  private static String wire(int number) {
    return number == 0 ? "0" : number == 1 ? "5" : "w" + number;
  }

  @Test
  void networksOfGatesSettleAsASimulatorHasIt() {
    int undefined = 0;
    int defined = 0;
    for (int seed = 0; seed < NETWORKS; seed++) {
      var random = new Random(seed);
      int chips = 1 + random.nextInt(3);
      int wires = 3 + 4 * chips;
      var gates = new ArrayList<Gate>();
      var bread = new Bread();
      for (int chip = 0; chip < chips; chip++) {
        String kind = KINDS[random.nextInt(KINDS.length)];
        var text = new StringBuilder("U" + chip + " " + kind);
        for (int gate = 0; gate < 4; gate++) {
          int a = random.nextInt(wires);
          int b = random.nextInt(wires);
          int out = 3 + 4 * chip + gate;
          int[] place = (kind.equals("7402") ? NOR_PLACES : PLACES)[gate];
          text.append(' ').append(place[0] + 1).append('=').append(wire(a));
          text.append(' ').append(place[1] + 1).append('=').append(wire(b));
          text.append(' ').append(place[2] + 1).append('=').append(wire(out));
          gates.add(new Gate(kind, a, b, out));
        }
        bread.chip(text.toString());
      }
      int[] expected = simulated(gates, wires);
      Settled settled = bread.settled();
      for (int chip = 0; chip < chips; chip++) {
        String found = Bread.outputs(settled, "U" + chip);
        for (int gate = 0; gate < 4; gate++) {
          int want = expected[3 + 4 * chip + gate];
          boolean swings = found.charAt(gate) == '?';
          assertThat(String.valueOf(found.charAt(gate)))
              .as("network %d, U%d gate %d", seed, chip, gate + 1)
              .isEqualTo(String.valueOf("LH?".charAt(want)));
          undefined += swings ? 1 : 0;
          defined += swings ? 0 : 1;
        }
      }
    }
    assertThat(undefined).isGreaterThan(NETWORKS / 2);
    assertThat(defined).isGreaterThan(NETWORKS);
  }
}
