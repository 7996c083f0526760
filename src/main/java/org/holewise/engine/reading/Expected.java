package org.holewise.engine.reading;

/**
 * What a reading should be.
 *
 * @param shown the expected value or word
 * @param low lower end of the 95 % band (SI); equal to the value for a word
 * @param high upper end of the band (SI)
 * @param worstLow lowest that limits allow, the meter's not included (SI)
 * @param worstHigh highest that limits allow (SI)
 * @param floating whether it hangs on an unconnected net
 * @param own limit of an error that is this reading's alone, beside the meter's (SI)
 */
public record Expected(
    Shown shown,
    double low,
    double high,
    double worstLow,
    double worstHigh,
    boolean floating,
    double own) {

  public Expected(
      Shown shown, double low, double high, double worstLow, double worstHigh, boolean floating) {
    this(shown, low, high, worstLow, worstHigh, floating, 0);
  }

  /** Either of two: what lies between them fits as well. */
  Expected or(Expected other) {
    return new Expected(
        either(shown, other.shown),
        Math.min(low, other.low),
        Math.max(high, other.high),
        Math.min(worstLow, other.worstLow),
        Math.max(worstHigh, other.worstHigh),
        floating || other.floating || !shown.equals(other.shown),
        Math.max(own, other.own));
  }

  private static Shown either(Shown one, Shown other) {
    if (one.equals(other)) {
      return one;
    }
    if (one instanceof Shown.Amount a && other instanceof Shown.Amount b) {
      return new Shown.Amount((a.value() + b.value()) / 2, a.unit());
    }
    boolean level = one instanceof Shown.Word word && Forecast.LEVEL_WORDS.contains(word.word());
    return level ? new Shown.Word(Forecast.UNDEFINED) : one;
  }
}
