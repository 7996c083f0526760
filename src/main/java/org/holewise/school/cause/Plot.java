package org.holewise.school.cause;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Where the points of a plot of said against found lie on its picture, which is square.
 *
 * @param points one a bin
 * @param ticks of both axes
 */
record Plot(List<Point> points, List<Tick> ticks) {

  static final double LEFT = 44;
  static final double TOP = 12;
  static final double SIDE = 240;

  private static final double EVERY = 0.2;
  private static final int TICKS = 5;

  /** A bin: its middle, and the range of rates that it may come from. */
  record Point(double x, double y, double low, double high) {}

  /** A line at a number in ten. */
  record Tick(double x, double y, String text) {}

  static Plot of(List<Bin> bins) {
    return new Plot(
        bins.stream()
            .map(bin -> new Point(x(bin.said()), y(bin.share()), y(bin.low()), y(bin.high())))
            .toList(),
        IntStream.rangeClosed(0, TICKS)
            .mapToDouble(i -> i * EVERY)
            .mapToObj(at -> new Tick(x(at), y(at), inTen(at, 0)))
            .toList());
  }

  /** A share as a number in ten. */
  static String inTen(double share, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", share * 10);
  }

  public double left() {
    return LEFT;
  }

  public double top() {
    return TOP;
  }

  public double right() {
    return LEFT + SIDE;
  }

  public double bottom() {
    return TOP + SIDE;
  }

  private static double x(double share) {
    return rounded(LEFT + SIDE * share);
  }

  private static double y(double share) {
    return rounded(TOP + SIDE * (1 - share));
  }

  private static double rounded(double at) {
    return Math.round(at * 10) / 10.0;
  }
}
