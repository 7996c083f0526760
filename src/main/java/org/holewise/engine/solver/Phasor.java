package org.holewise.engine.solver;

/**
 * A voltage that swings at one frequency, and how it answers to small changes. The arrays belong to
 * the caller.
 *
 * @param re part in phase with the generator, as a peak (V)
 * @param im part a quarter ahead (V)
 * @param reSlopes d(re)/d(parameter) for every one of {@link Circuit#parameters()} (SI)
 * @param imSlopes d(im)/d(parameter) (SI)
 */
@SuppressWarnings("ArrayRecordComponent")
public record Phasor(double re, double im, double[] reSlopes, double[] imSlopes) {

  /** Its peak (V). */
  public double size() {
    return StrictMath.hypot(re, im);
  }

  /** How the peak answers to every parameter; not at all where it is nothing. */
  public double[] slopes() {
    double size = size();
    double[] slopes = new double[reSlopes.length];
    for (int k = 0; size > 0 && k < slopes.length; k++) {
      slopes[k] = (re * reSlopes[k] + im * imSlopes[k]) / size;
    }
    return slopes;
  }

  /** How far it is ahead of the generator (rad). */
  public double phase() {
    return StrictMath.atan2(im, re);
  }
}
