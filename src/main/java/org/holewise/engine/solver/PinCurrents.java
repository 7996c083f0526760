package org.holewise.engine.solver;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Currents into parts at their pins, as weighted sums of what elements draw from spots.
 *
 * <p>Where a part's law says what flows at a pin, the sum is that. A closed contact and twins have
 * no law: there Kirchhoff's current law decides over the pieces of metal that are joined, and where
 * several joins are in parallel they share as equal resistances would.
 */
final class PinCurrents {
  private final Circuit circuit;
  private final Spots spots;
  private final Nodes nodes;
  private final Elements elements;
  private final Equations equations;
  private final double[] x;

  /** A weight for every spot; {@code own}: of the laws of parts only, else of all elements. */
  @SuppressWarnings("ArrayRecordComponent")
  record Weights(double[] bySpot, boolean own) {}

  PinCurrents(Circuit circuit, Spots spots, Equations equations, double[] x) {
    this.circuit = circuit;
    this.spots = spots;
    this.equations = equations;
    nodes = equations.nodes;
    elements = equations.elements;
    this.x = x;
  }

  /** What the part at that spot draws from it by its law (A). */
  double law(int spot) {
    double[] one = new double[spots.count];
    one[spot] = 1;
    return value(new Weights(one, true));
  }

  Weights weights(int pin) {
    int spot = spots.pin(pin);
    double[] weights = new double[spots.count];
    boolean bare = circuit.contact[pin] + circuit.meter[pin] > 0;
    if (!joinedInside(spot, bare ? -1 : spots.net(circuit.net[pin]))) {
      weights[spot] = 1;
      return new Weights(weights, true);
    }
    if (bare) {
      weights[spot] = -1;
    } else {
      shareOut(weights, spot, spots.net(circuit.net[pin]));
    }
    return new Weights(weights, false);
  }

  /** Whether the spot is joined to another than its net. */
  private boolean joinedInside(int spot, int net) {
    return elements.joins.stream()
        .anyMatch(j -> j.a() == spot && j.b() != net || j.b() == spot && j.a() != net);
  }

  private void shareOut(double[] weights, int spot, int net) {
    int[] group = group(spot);
    var laplacian = new DMatrixRMaj(group.length, group.length);
    for (Elements.Join join : elements.joins) {
      int a = Arrays.binarySearch(group, join.a());
      int b = Arrays.binarySearch(group, join.b());
      if (a >= 0 && b >= 0) {
        laplacian.add(a, a, 1);
        laplacian.add(b, b, 1);
        laplacian.add(a, b, -1);
        laplacian.add(b, a, -1);
      }
    }
    laplacian.add(0, 0, 1);
    var ends = new DMatrixRMaj(group.length, 1);
    ends.add(Arrays.binarySearch(group, spot), 0, 1);
    ends.add(Arrays.binarySearch(group, net), 0, -1);
    CommonOps_DDRM.solve(laplacian, ends, ends);
    for (int k = 0; k < group.length; k++) {
      weights[group[k]] = ends.get(k);
    }
  }

  private int[] group(int spot) {
    int metal = nodes.metal(spot);
    return IntStream.range(0, spots.count).filter(s -> nodes.metal(s) == metal).toArray();
  }

  /** The weighted sum (A). */
  double value(Weights weights) {
    double[] w = weights.bySpot;
    double sum = 0;
    for (Elements.Resistance r : elements.resistances.subList(0, resistances(weights))) {
      double over = equations.volts(x, r.a()) - equations.volts(x, r.b());
      sum += (w[r.a()] - w[r.b()]) * r.siemens() * over;
    }
    for (int k = 0; k < sources(weights); k++) {
      Elements.Source s = elements.sources.get(k);
      sum += (w[s.plus] - w[s.minus]) * x[nodes.count + k];
    }
    for (Elements.Law law : elements.laws) {
      for (int t = 0; t < law.spots.length; t++) {
        sum += w[law.spots[t]] * law.i[t];
      }
    }
    for (Elements.Feed feed : elements.feeds) {
      sum -= weights.own ? 0 : (w[feed.into()] - w[feed.from()]) * feed.amps();
    }
    return sum;
  }

  /** Slopes of the sum by the unknowns. */
  double[] gradient(Weights weights) {
    double[] w = weights.bySpot;
    double[] c = new double[equations.n];
    for (Elements.Resistance r : elements.resistances.subList(0, resistances(weights))) {
      double g = (w[r.a()] - w[r.b()]) * r.siemens();
      add(c, r.a(), g);
      add(c, r.b(), -g);
    }
    for (int k = 0; k < sources(weights); k++) {
      Elements.Source s = elements.sources.get(k);
      c[nodes.count + k] += w[s.plus] - w[s.minus];
    }
    for (Elements.Law law : elements.laws) {
      int n = law.spots.length;
      for (int k = 0; k < n * n; k++) {
        add(c, law.spots[k % n], w[law.spots[k / n]] * law.dv[k]);
      }
    }
    return c;
  }

  private void add(double[] c, int spot, double g) {
    int node = nodes.at(spot);
    if (node >= 0) {
      c[node] += g;
    }
  }

  private int resistances(Weights weights) {
    return weights.own ? elements.ownResistances : elements.resistances.size();
  }

  private int sources(Weights weights) {
    return weights.own ? elements.ownSources : elements.sources.size();
  }
}
