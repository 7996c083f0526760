package org.holewise.engine.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Series of preferred values (IEC 60063). E48 and E96 follow the rounded geometric rule, E24 and
 * those below it are older and do not. Values are positive and finite; a value within one part in
 * 10⁹ of a member counts as that member. Immutable.
 */
public enum Series {
  E6(10, 15, 22, 33, 47, 68),
  E12(10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82),
  E24(
      10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82,
      91),
  E48(geometric(48)),
  E96(geometric(96));

  private static final double SAME = 1e-9;

  @SuppressWarnings("ImmutableEnumChecker") // unmodifiable, of an immutable type
  private final List<Integer> significands;

  Series(int... significands) {
    this.significands = IntStream.of(significands).boxed().toList();
  }

  /** The members of one decade, rising: two figures up to E24, three from E48. */
  public List<Integer> significands() {
    return significands;
  }

  /** The member nearest by ratio; of two equally near, the larger. */
  public double nearest(double value) {
    if (contains(value)) {
      return around(value).stream().filter(member -> same(member, value)).findFirst().orElseThrow();
    }
    double below = below(value);
    double above = above(value);
    return value / below < above / value ? below : above;
  }

  /** The next member up: the smallest that is larger, also where the value is itself a member. */
  public double above(double value) {
    return around(value).stream()
        .filter(member -> member > value && !same(member, value))
        .findFirst()
        .orElseThrow();
  }

  /** The next member down: the largest that is smaller, also where the value is itself a member. */
  public double below(double value) {
    return around(value).stream()
        .filter(member -> member < value && !same(member, value))
        .reduce((earlier, later) -> later)
        .orElseThrow();
  }

  /** Whether the value is a member, in whatever decade. */
  public boolean contains(double value) {
    return around(value).stream().anyMatch(member -> same(member, value));
  }

  /** The members of the value's decade and of its neighbours, rising. */
  private List<Double> around(double value) {
    if (!(value > 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("not a positive value: " + value);
    }
    int decade = (int) StrictMath.floor(StrictMath.log10(value));
    int figures = Integer.toString(significands.get(0)).length();
    List<Double> members = new ArrayList<>();
    for (int power = decade - 1; power <= decade + 1; power++) {
      for (int significand : significands) {
        members.add(Double.parseDouble(significand + "e" + (power - figures + 1)));
      }
    }
    return members;
  }

  private static boolean same(double member, double value) {
    return Math.abs(member - value) <= SAME * member;
  }

  private static int[] geometric(int count) {
    return IntStream.range(0, count)
        .map(i -> (int) StrictMath.rint(100 * StrictMath.pow(10, i / (double) count)))
        .toArray();
  }
}
