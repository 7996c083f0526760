package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Circuits at random with op-amps, comparators, MOSFETs and regulators. */
@Tag("law")
class ActiveCircuitsTest {
  /** How many are drawn; more where the property says so. */
  private static final int DRAWS = Integer.getInteger("holewise.active.draws", 100);

  private static final int FROM = Integer.getInteger("holewise.active.from", 0);

  /**
   * An op-amp's output answers to the rounding of its inputs: 2e-15 of 15 V, times 2e5, over 1 mΩ
   * is 6 µA, and two may fight over a wire (A).
   */
  private static final double LOUD = 2e-5;

  private static final double SHARE = 1e-6;

  @Test
  void everyCircuitHasAnOperatingPoint() {
    int solved = 0;
    List<Integer> lost = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (int draw = FROM; draw < FROM + DRAWS; draw++) {
      Rows rows = RandomCircuits.powered(draw);
      Outcome outcome = OperatingPointSolver.solve(rows.circuit());
      if (outcome instanceof OperatingPoint point) {
        wrong.addAll(currentsThatStay(rows, point, draw));
        solved++;
      } else if (((Unsolvable) outcome).why() == Unsolvable.Why.NOT_CONVERGED) {
        lost.add(draw);
      }
    }
    assertThat(lost).as("not converged").isEmpty();
    assertThat(wrong).as("currents that do not cancel").isEmpty();
    assertThat(solved).isGreaterThan(DRAWS / 2);
  }

  /** Kirchhoff's current law at every net, from what each part says that it draws. */
  private static List<String> currentsThatStay(Rows rows, OperatingPoint point, int draw) {
    List<String> wrong = new ArrayList<>();
    var netlist = rows.netlist();
    for (int net = 0; net < netlist.nets().size(); net++) {
      Point at = new Point.AtNet(net);
      double sum = point.floating(at) ? point.volts(at) * 1e-9 : 0;
      double size = 0;
      for (var pin : netlist.nets().get(net).pins()) {
        sum += point.current(pin);
        size = Math.max(size, Math.abs(point.current(pin)));
      }
      if (!(Math.abs(sum) < LOUD + SHARE * size)) {
        wrong.add("draw %d net %d: %s A of %s".formatted(draw, net, sum, size));
      }
    }
    return wrong;
  }
}
