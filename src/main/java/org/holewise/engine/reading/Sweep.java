package org.holewise.engine.reading;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One AC voltage as a multiple of another while the generators are turned from end to end, each
 * under the meter that takes it.
 *
 * <p>Method: the ratio at {@value #A_DECADE} frequencies a decade shows where it is greatest; that
 * place is closed in on by the golden section, the corners beside it by halving. How they answer to
 * the circuit's numbers follows from the ratio's own slopes by the implicit function theorem. How
 * surely a hand finds them follows from the last digits of the meter: the flatter the ratio, the
 * less.
 */
final class Sweep {
  /**
   * From where to where the generator is turned, as natural logarithms (common practice: a function
   * generator's whole dial and some).
   */
  private static final double LEAST = StrictMath.log(0.1);

  private static final double MOST = StrictMath.log(1e8);

  private static final int A_DECADE = 10;
  private static final int PLACES = 9 * A_DECADE;
  private static final int CLOSER = 60;

  /** −3 dB: half the power is left. */
  private static final double HALF_POWER = StrictMath.log(Math.sqrt(0.5));

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double DECIBELS = 20 / StrictMath.log(10);

  /** Steps of the logarithm of frequency for slopes along it, and for bends. */
  private static final double STEP = 1e-5;

  private static final double BEND = 1e-2;

  private final Swing of;
  private final Swing to;
  private final Meter meter;

  /** A count of the meter (V). */
  private final double least;

  Sweep(Swing of, Swing to, Meter meter) {
    this.of = of;
    this.to = to;
    this.meter = meter;
    least = meter.resolution(Function.ACVOLTS, 0);
  }

  /**
   * The ratio at one frequency. What is less than a count of the meter is read as one; a ratio to
   * that is none.
   */
  Optional<Forecast> ratio(OptionalDouble hertz, boolean decibel) {
    Swing.Size above = of.size(hertz);
    Swing.Size below = to.size(hertz);
    if (!(below.value() > least)) {
      return Optional.empty();
    }
    boolean seen = above.value() > least;
    double plain = Math.max(above.value(), least) / below.value();
    double scale = decibel ? DECIBELS : plain;
    return Optional.of(
        new Forecast(
            Forecast.Sort.AMOUNT,
            decibel ? Function.DECIBELS : Function.RATIO,
            decibel ? DECIBELS * StrictMath.log(plain) : plain,
            seen ? Instrument.scaled(shares(above, below), scale) : new double[of.parameters()],
            floating(),
            scale * unsure(Math.max(above.value(), least), below.value())));
  }

  /** Where half the power of the greatest is left; empty where that is nowhere in reach. */
  Optional<Forecast> corner(boolean upper) {
    OptionalDouble best = best();
    return best.isPresent()
        ? edge(best.getAsDouble(), upper)
            .map(edge -> hertz(edge.place(), edge.slopes(), edge.unsure()))
        : Optional.empty();
  }

  /** Where the ratio is greatest; empty where it only rises or only falls. */
  Optional<Forecast> resonance() {
    return top().map(top -> hertz(top.place(), top.slopes(), top.unsure()));
  }

  /** The frequency of the greatest ratio over the distance of the corners. */
  Optional<Forecast> quality() {
    Optional<Found> top = top();
    Optional<Found> upper = top.flatMap(at -> edge(at.place(), true));
    Optional<Found> lower = top.flatMap(at -> edge(at.place(), false));
    return upper.isPresent() && lower.isPresent()
        ? Optional.of(quality(top.orElseThrow(), upper.get(), lower.get()))
        : Optional.empty();
  }

  private Forecast quality(Found top, Found upper, Found lower) {
    double above = StrictMath.exp(upper.place());
    double below = StrictMath.exp(lower.place());
    double width = above - below;
    double quality = StrictMath.exp(top.place()) / width;
    double[] slopes = top.slopes().clone();
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] -= (above * upper.slopes()[k] - below * lower.slopes()[k]) / width;
    }
    double unsure = StrictMath.hypot(above * upper.unsure(), below * lower.unsure()) / width;
    return new Forecast(
        Forecast.Sort.AMOUNT,
        Function.RATIO,
        quality,
        Instrument.scaled(slopes, quality),
        floating(),
        quality * unsure);
  }

  /**
   * A place that was found, as the logarithm of its frequency.
   *
   * @param slopes of the place, by parameter
   * @param unsure limit of a hand's error in finding it
   */
  @SuppressWarnings("ArrayRecordComponent")
  private record Found(double place, double[] slopes, double unsure) {}

  private Forecast hertz(double place, double[] slopes, double unsure) {
    double hertz = StrictMath.exp(place);
    return new Forecast(
        Forecast.Sort.AMOUNT,
        Function.FREQUENCY,
        hertz,
        Instrument.scaled(slopes, hertz),
        floating(),
        hertz * unsure);
  }

  private Optional<Found> top() {
    OptionalDouble best = best();
    if (best.isEmpty()) {
      return Optional.empty();
    }
    double place = best.getAsDouble();
    double bend = (log(place + BEND) - 2 * log(place) + log(place - BEND)) / (BEND * BEND);
    if (!(bend < 0) || place - LEAST < 2 * BEND || MOST - place < 2 * BEND) {
      return Optional.empty();
    }
    double[] before = shares(place - BEND);
    double[] slopes = shares(place + BEND);
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = (before[k] - slopes[k]) / (2 * BEND * bend);
    }
    return Optional.of(new Found(place, slopes, Math.sqrt(2 * unsure(place) / -bend)));
  }

  private Optional<Found> edge(double best, boolean upper) {
    double half = log(best) + HALF_POWER;
    double step = (upper ? 1 : -1) * (MOST - LEAST) / PLACES;
    double here = best;
    double there = best;
    do {
      here = there;
      there = here + step;
      if (there < LEAST || there > MOST) {
        return Optional.empty();
      }
    } while (log(there) > half);
    for (int k = 0; k < CLOSER; k++) {
      double middle = (here + there) / 2;
      if (log(middle) > half) {
        here = middle;
      } else {
        there = middle;
      }
    }
    double place = (here + there) / 2;
    double along = (log(place + STEP) - log(place - STEP)) / (2 * STEP);
    double[] greatest = shares(best);
    double[] slopes = shares(place);
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = (greatest[k] - slopes[k]) / along;
    }
    double unsure = StrictMath.hypot(unsure(place), unsure(best)) / Math.abs(along);
    return Optional.of(new Found(place, slopes, unsure));
  }

  /** Where the ratio is greatest; empty where nothing swings by a count of the meter. */
  private OptionalDouble best() {
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= PLACES; k++) {
      double log = log(place(k));
      if (log > most) {
        most = log;
        best = k;
      }
    }
    return best < 0 || of.rms(StrictMath.exp(place(best))) < least
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            greatest(place(Math.max(best - 1, 0)), place(Math.min(best + 1, PLACES))));
  }

  private double greatest(double from, double to) {
    double low = from;
    double high = to;
    double one = high - GOLDEN * (high - low);
    double other = low + GOLDEN * (high - low);
    double atOne = log(one);
    double atOther = log(other);
    for (int k = 0; k < CLOSER; k++) {
      if (atOne > atOther) {
        high = other;
        other = one;
        atOther = atOne;
        one = high - GOLDEN * (high - low);
        atOne = log(one);
      } else {
        low = one;
        one = other;
        atOne = atOther;
        other = low + GOLDEN * (high - low);
        atOther = log(other);
      }
    }
    return (low + high) / 2;
  }

  private static double place(int k) {
    return LEAST + (MOST - LEAST) * k / PLACES;
  }

  /** Logarithm of the ratio at a place; that of nothing where a ratio to nothing is asked for. */
  private double log(double place) {
    double hertz = StrictMath.exp(place);
    double below = to.rms(hertz);
    return below > least ? StrictMath.log(of.rms(hertz) / below) : Double.NEGATIVE_INFINITY;
  }

  private double[] shares(double place) {
    var hertz = OptionalDouble.of(StrictMath.exp(place));
    return shares(of.size(hertz), to.size(hertz));
  }

  /** Slopes of the ratio's logarithm. */
  private static double[] shares(Swing.Size of, Swing.Size to) {
    double[] shares = new double[of.slopes().length];
    for (int k = 0; k < shares.length; k++) {
      shares[k] = of.slopes()[k] / of.value() - to.slopes()[k] / to.value();
    }
    return shares;
  }

  private double unsure(double place) {
    double hertz = StrictMath.exp(place);
    return unsure(of.rms(hertz), to.rms(hertz));
  }

  /** Limit of the digits' error of a ratio, as a share of it. */
  private double unsure(double of, double to) {
    return StrictMath.hypot(
        meter.digits(Function.ACVOLTS, of) / of, meter.digits(Function.ACVOLTS, to) / to);
  }

  private boolean floating() {
    return of.floating() || to.floating();
  }
}
