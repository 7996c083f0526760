package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The places of a circuit, numbered: nets first, then the bare metal of every pin, then nodes
 * inside parts, then fresh strips. Which spots are one node is another matter.
 */
final class Spots {
  private final Circuit circuit;
  private final int[] firstInner;
  private final List<Integer> fresh = new ArrayList<>();
  final int count;

  Spots(Circuit circuit) {
    this.circuit = circuit;
    int parts = circuit.mounted.length;
    firstInner = new int[parts + 1];
    firstInner[0] = circuit.nets() + circuit.net.length;
    for (int k = 0; k < parts; k++) {
      firstInner[k + 1] = firstInner[k] + circuit.mounted[k].stamp().inner();
    }
    for (int net : circuit.net) {
      addFresh(net);
    }
    circuit.outside.stream().flatMap(Edit::ends).forEach(this::addFresh);
    count = firstInner[parts] + fresh.size();
  }

  private void addFresh(Point point) {
    if (point instanceof Point.AtNet at) {
      addFresh(at.net());
    }
  }

  private void addFresh(int net) {
    if (net >= circuit.nets() && !fresh.contains(net)) {
      fresh.add(net);
    }
  }

  int nets() {
    return circuit.nets();
  }

  /** Whether a spot is a net or a fresh strip. */
  boolean isNet(int spot) {
    return spot < circuit.nets() || spot >= count - fresh.size();
  }

  /** Spot of a net or strip; −1 for a strip that nothing touches. */
  int net(int number) {
    if (number < circuit.nets()) {
      return number;
    }
    int index = fresh.indexOf(number);
    return index < 0 ? -1 : firstInner[firstInner.length - 1] + index;
  }

  int pin(int pin) {
    return circuit.nets() + pin;
  }

  int at(Point point) {
    return point instanceof Point.AtPin pin
        ? pin(circuit.plan.pin(pin.pin()))
        : net(((Point.AtNet) point).net());
  }

  /** Spot of a part's own spot. */
  int own(int part, int spot) {
    int first = circuit.plan.firstPin()[part];
    int pins = circuit.plan.firstPin()[part + 1] - first;
    return spot < pins ? pin(first + spot) : firstInner[part] + spot - pins;
  }

  /** Whether the two number the pins of the same parts on as many nets. */
  boolean alike(Spots other) {
    Plan one = circuit.plan;
    Plan two = other.circuit.plan;
    return one == two
        || one.nets() == two.nets() && one.pins().keySet().equals(two.pins().keySet());
  }

  /** The spot here that is a spot of another circuit of the same parts; −1 where there is none. */
  int same(Spots other, int spot) {
    int inner = firstInner[0];
    int parts = firstInner.length - 1;
    if (spot < inner) {
      return spot;
    }
    if (spot >= other.firstInner[parts]) {
      return net(other.fresh.get(spot - other.firstInner[parts]));
    }
    return Arrays.equals(firstInner, other.firstInner) ? spot : -1;
  }
}
