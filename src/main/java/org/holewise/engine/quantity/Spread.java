package org.holewise.engine.quantity;

/**
 * How the true values of a parameter lie about its nominal one. Where a family has limits, its
 * worst case is those; where it has only a deviation, three deviations. Immutable; the same numbers
 * in every JVM.
 */
public sealed interface Spread
    permits Spread.Exact, Spread.Limit, Spread.Normal, Spread.LogNormal, Spread.LogUniform {

  /** How many deviations count as the worst case. */
  double WORST = 3;

  /** Standard deviation, in the unit of the nominal value. */
  double deviation(double nominal);

  /** Worst case downwards, in the unit of the nominal value. */
  double low(double nominal);

  /** Worst case upwards, in the unit of the nominal value. */
  double high(double nominal);

  /**
   * The quantile, in the unit of the nominal value.
   *
   * @param u probability inside (0, 1); unchecked exception elsewhere
   */
  double at(double nominal, double u);

  /** No spread at all. */
  record Exact() implements Spread {
    @Override
    public double deviation(double nominal) {
      return 0;
    }

    @Override
    public double low(double nominal) {
      return nominal;
    }

    @Override
    public double high(double nominal) {
      return nominal;
    }

    @Override
    public double at(double nominal, double u) {
      probability(u);
      return nominal;
    }
  }

  /**
   * A tolerance: uniform within a limit either way. Its deviation is half/√3 (JCGM 100, 4.3.7).
   *
   * @param half the limit, in the unit of the nominal value; not negative
   */
  record Limit(double half) implements Spread {
    public Limit {
      notNegative(half);
    }

    @Override
    public double deviation(double nominal) {
      return half / StrictMath.sqrt(3);
    }

    @Override
    public double low(double nominal) {
      return nominal - half;
    }

    @Override
    public double high(double nominal) {
      return nominal + half;
    }

    @Override
    public double at(double nominal, double u) {
      return nominal + half * (2 * probability(u) - 1);
    }
  }

  /**
   * Normal about the nominal value.
   *
   * @param deviation standard deviation, in the unit of the nominal value; not negative
   */
  record Normal(double deviation) implements Spread {
    public Normal {
      notNegative(deviation);
    }

    @Override
    public double deviation(double nominal) {
      return deviation;
    }

    @Override
    public double low(double nominal) {
      return nominal - WORST * deviation;
    }

    @Override
    public double high(double nominal) {
      return nominal + WORST * deviation;
    }

    @Override
    public double at(double nominal, double u) {
      return nominal + deviation * NormalQuantile.of(probability(u));
    }
  }

  /**
   * The logarithm is normal and the nominal value, which is positive, its median. The absolute
   * deviation is nominal · deviation, to first order: at 35 % the exact one is 9.7 % larger.
   *
   * @param deviation standard deviation of the natural logarithm; not negative
   */
  record LogNormal(double deviation) implements Spread {
    public LogNormal {
      notNegative(deviation);
    }

    @Override
    public double deviation(double nominal) {
      return nominal * deviation;
    }

    @Override
    public double low(double nominal) {
      return nominal * StrictMath.exp(-WORST * deviation);
    }

    @Override
    public double high(double nominal) {
      return nominal * StrictMath.exp(WORST * deviation);
    }

    @Override
    public double at(double nominal, double u) {
      return nominal * StrictMath.exp(deviation * NormalQuantile.of(probability(u)));
    }
  }

  /**
   * The logarithm is uniform between two limits, wherever the nominal value lies. Variance of x:
   * (high² − low²) / 2L − ((high − low) / L)² with L = ln(high / low).
   *
   * @param low in the unit of the nominal value; positive
   * @param high in the unit of the nominal value; above low
   */
  record LogUniform(double low, double high) implements Spread {
    public LogUniform {
      if (!(low > 0 && high > low && high <= Double.MAX_VALUE)) {
        throw new IllegalArgumentException("no positive range: " + low + " to " + high);
      }
    }

    @Override
    public double deviation(double nominal) {
      double log = StrictMath.log(high / low);
      double mean = (high - low) / log;
      double square = (high - low) * (high + low) / (2 * log);
      return StrictMath.sqrt(Math.max(square - mean * mean, 0));
    }

    @Override
    public double low(double nominal) {
      return low;
    }

    @Override
    public double high(double nominal) {
      return high;
    }

    @Override
    public double at(double nominal, double u) {
      return low * StrictMath.exp(probability(u) * StrictMath.log(high / low));
    }
  }

  private static double probability(double u) {
    if (!(u > 0 && u < 1)) {
      throw new IllegalArgumentException("not inside (0, 1): " + u);
    }
    return u;
  }

  private static void notNegative(double size) {
    if (!(size >= 0 && size <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("not a size: " + size);
    }
  }
}
