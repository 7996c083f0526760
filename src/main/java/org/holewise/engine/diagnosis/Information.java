package org.holewise.engine.diagnosis;

import java.util.Arrays;

/** Bayes' rule, and what a further reading is expected to tell. */
final class Information {
  /** Nodes and weights for the mean of a standard normal (Abramowitz and Stegun, table 25.10). */
  private static final double[] NODE = {
    0, 1.3556261799742659, -1.3556261799742659, 2.8569700138728056, -2.8569700138728056
  };

  private static final double[] WEIGHT = {
    0.5333333333333333,
    0.2220759220056126,
    0.2220759220056126,
    0.0112574113277207,
    0.0112574113277207
  };

  /** Squared deviations beyond which a normal density is nothing. */
  private static final double FAR = 80;

  private Information() {}

  /** Probabilities that stand to one another as the exponentials of these do. */
  static double[] normalised(double[] logs) {
    double most = Arrays.stream(logs).max().orElse(0);
    double sum = 0;
    for (double log : logs) {
      sum += StrictMath.exp(log - most);
    }
    double[] probability = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      probability[i] = StrictMath.exp(logs[i] - most) / sum;
    }
    return probability;
  }

  /**
   * Mutual information of place and outcome (bit), which is the expected fall of entropy over
   * places. Each hypothesis's outcome is normal, or beyond the meter's range for certain; the
   * mixture is integrated at five Gauss–Hermite nodes of every hypothesis.
   *
   * @param probability of each hypothesis, in whatever unit
   * @param place number of each hypothesis's place
   * @param mean of the outcome by hypothesis; infinite where it is beyond the range
   * @param variance of the outcome by hypothesis, above zero
   */
  static double gain(double[] probability, int[] place, double[] mean, double[] variance) {
    double[] prior = new double[Arrays.stream(place).max().orElse(0) + 1];
    double total = 0;
    for (int h = 0; h < place.length; h++) {
      prior[place[h]] += probability[h];
      total += probability[h];
    }
    double gain = 0;
    double[] posterior = new double[prior.length];
    for (int h = 0; h < place.length; h++) {
      for (int k = 0; k < NODE.length; k++) {
        double y = mean[h] + NODE[k] * Math.sqrt(variance[h]);
        Arrays.fill(posterior, 0);
        double mixture = 0;
        for (int other = 0; other < place.length; other++) {
          double density = density(y, probability[other], mean[other], variance[other]);
          posterior[place[other]] += density;
          mixture += density;
        }
        double fall = posterior[place[h]] / mixture / (prior[place[h]] / total);
        gain += probability[h] / total * WEIGHT[k] * StrictMath.log(Math.max(fall, 1e-9));
      }
    }
    return gain / StrictMath.log(2);
  }

  /** Entropy of shares of a total (bit). */
  static double entropy(double[] shares, double total) {
    double entropy = 0;
    for (double share : shares) {
      if (share > 0) {
        entropy -= share / total * StrictMath.log(share / total) / StrictMath.log(2);
      }
    }
    return entropy;
  }

  private static double density(double y, double probability, double mean, double variance) {
    if (Double.isInfinite(y) || Double.isInfinite(mean)) {
      return y == mean ? probability : 0;
    }
    double square = (y - mean) * (y - mean) / variance;
    return square < FAR ? probability * StrictMath.exp(-square / 2) / Math.sqrt(variance) : 0;
  }
}
