package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.part.Wave;

/**
 * A circuit at one frequency about its operating point, by its {@link ComplexEquations}.
 *
 * <p>Slopes by the adjoint (Director and Rohrer 1969): with Aᵀ·λ = c the slope of cᵀ·X by p is
 * −λᵀ·(dA/dp)·X + λᵀ·db/dp. A device's slopes change with p both of themselves and because the
 * operating point moves; that is taken as a central difference along the way that the point moves.
 */
public final class SmallSignal {
  /** So far a device's voltages are moved for a difference (V), and its own numbers in shares. */
  private static final double STEP = 1e-5;

  private final ComplexEquations complex;
  private final Equations equations;
  private final Adjoint atRest;
  private final double omega;
  private final int parameters;
  private final int n;
  private final double[] solution;
  private final List<Drive> drives = new ArrayList<>();
  private List<double[][]> moves = List.of();

  /** A generator that swings: the row of its source and how the row follows its peak. */
  private record Drive(int row, double sign, int slot) {}

  /** One frequency and shape of wave among the generators. */
  public record Tone(double hertz, Wave wave) {}

  /**
   * The circuit at one tone.
   *
   * @param complex the circuit at its frequency
   * @param all whether every generator of that wave is set to that frequency
   */
  SmallSignal(ComplexEquations complex, Adjoint atRest, Tone tone, boolean all, int parameters) {
    this.complex = complex;
    this.atRest = atRest;
    this.parameters = parameters;
    equations = complex.equations;
    omega = complex.omega;
    n = equations.n;
    solution = new double[2 * n];
    for (int k = 0; k < equations.elements.sources.size(); k++) {
      Elements.Source source = equations.elements.sources.get(k);
      int row = complex.row(k);
      if (source.swing.isPresent()
          && source.swing.get().wave() == tone.wave()
          && (all || source.swing.get().hertz() == tone.hertz())) {
        solution[row] = source.sign * source.swing.get().peak();
        drives.add(new Drive(row, source.sign, source.swing.get().slot()));
      }
    }
    complex.solve(solution);
  }

  /** The tones of the generators, each once, in the order of the elements. */
  static List<Tone> tones(Elements elements) {
    return elements.sources.stream()
        .flatMap(source -> source.swing.stream())
        .map(swing -> new Tone(swing.hertz(), swing.wave()))
        .distinct()
        .toList();
  }

  /** The voltage between two spots. */
  Phasor volts(int plus, int minus) {
    double[] lambda = complex.adjoint(complex.between(plus, minus));
    double[] re = new double[parameters];
    double[] im = new double[parameters];
    elements(lambda, re, im);
    devices(lambda, re, im);
    for (Drive drive : drives) {
      if (drive.slot() >= 0) {
        re[drive.slot()] += drive.sign() * lambda[drive.row()];
        im[drive.slot()] += drive.sign() * lambda[drive.row() + n];
      }
    }
    return new Phasor(
        at(solution, plus, 0) - at(solution, minus, 0),
        at(solution, plus, n) - at(solution, minus, n),
        re,
        im);
  }

  private double at(double[] of, int spot, int part) {
    int node = equations.nodes.at(spot);
    return node < 0 ? 0 : of[node + part];
  }

  /** Adds −(λ drop)·factor·(X drop) to the slopes of a slot. */
  private void add(
      int slot, double[] pair, double factorRe, double factorIm, double[] re, double[] im) {
    double productRe = pair[0] * pair[2] - pair[1] * pair[3];
    double productIm = pair[0] * pair[3] + pair[1] * pair[2];
    re[slot] -= factorRe * productRe - factorIm * productIm;
    im[slot] -= factorRe * productIm + factorIm * productRe;
  }

  private double[] pair(double[] lambda, int a, int b) {
    return new double[] {
      at(lambda, a, 0) - at(lambda, b, 0),
      at(lambda, a, n) - at(lambda, b, n),
      at(solution, a, 0) - at(solution, b, 0),
      at(solution, a, n) - at(solution, b, n)
    };
  }

  private void elements(double[] lambda, double[] re, double[] im) {
    for (Elements.Resistance r : equations.elements.resistances) {
      if (r.slot() >= 0) {
        double byOhms = -r.siemens() * r.siemens();
        add(r.slot(), pair(lambda, r.a(), r.b()), byOhms, 0, re, im);
      }
    }
    for (Elements.Capacitance c : equations.elements.capacitances) {
      if (c.slot() >= 0) {
        add(c.slot(), pair(lambda, c.a(), c.b()), 0, omega, re, im);
      }
    }
    for (int k = 0; k < equations.elements.sources.size(); k++) {
      int slot = equations.elements.sources.get(k).henriesSlot;
      int row = complex.row(k);
      if (slot >= 0) {
        double[] own = {lambda[row], lambda[row + n], solution[row], solution[row + n]};
        add(slot, own, 0, -omega, re, im);
      }
    }
  }

  private void devices(double[] lambda, double[] re, double[] im) {
    List<Elements.Law> laws = equations.elements.laws;
    if (moves.isEmpty() && !laws.isEmpty()) {
      moves = laws.stream().map(this::moves).toList();
    }
    for (int l = 0; l < laws.size(); l++) {
      for (int slot = 0; slot < parameters; slot++) {
        double[] change = moves.get(l)[slot];
        if (change.length > 0) {
          device(laws.get(l), change, lambda, slot, re, im);
        }
      }
    }
  }

  private void device(
      Elements.Law law, double[] change, double[] lambda, int slot, double[] re, double[] im) {
    int terminals = law.spots.length;
    for (int s = 0; s < terminals; s++) {
      double sumRe = 0;
      double sumIm = 0;
      for (int t = 0; t < terminals; t++) {
        sumRe += change[s * terminals + t] * at(solution, law.spots[t], 0);
        sumIm += change[s * terminals + t] * at(solution, law.spots[t], n);
      }
      double lambdaRe = at(lambda, law.spots[s], 0);
      double lambdaIm = at(lambda, law.spots[s], n);
      re[slot] -= lambdaRe * sumRe - lambdaIm * sumIm;
      im[slot] -= lambdaRe * sumIm + lambdaIm * sumRe;
    }
  }

  /** How a device's slopes change with every parameter; empty where they do not. */
  private double[][] moves(Elements.Law law) {
    int terminals = law.spots.length;
    double[][] drift = new double[terminals][];
    for (int t = 0; t < terminals; t++) {
      drift[t] = atRest.volts(law.spots[t], -1).slopes();
    }
    double[][] moves = new double[parameters][];
    for (int slot = 0; slot < parameters; slot++) {
      moves[slot] = move(law, drift, slot);
    }
    return moves;
  }

  private static double[] move(Elements.Law law, double[][] drift, int slot) {
    int terminals = law.spots.length;
    double most = 0;
    for (int t = 0; t < terminals; t++) {
      most = Math.max(most, Math.abs(drift[t][slot] - drift[terminals - 1][slot]));
    }
    for (int k = 0; k < law.p.length; k++) {
      if (law.slots[k] == slot) {
        most = Math.max(most, 1 / Math.max(Math.abs(law.p[k]), 0.1));
      }
    }
    if (!(most > 0)) {
      return new double[0];
    }
    double h = STEP / most;
    double[] above = slopes(law, drift, slot, h);
    double[] below = slopes(law, drift, slot, -h);
    for (int k = 0; k < above.length; k++) {
      above[k] = (above[k] - below[k]) / (2 * h);
    }
    return above;
  }

  private static double[] slopes(Elements.Law law, double[][] drift, int slot, double h) {
    int terminals = law.spots.length;
    double[] v = law.v.clone();
    double[] p = law.p.clone();
    for (int t = 0; t < terminals; t++) {
      v[t] += h * drift[t][slot];
    }
    for (int k = 0; k < p.length; k++) {
      p[k] += law.slots[k] == slot ? h : 0;
    }
    double[] dv = new double[terminals * terminals];
    law.device.evaluate(v, p, new double[terminals], dv, new double[terminals * p.length]);
    return dv;
  }
}
