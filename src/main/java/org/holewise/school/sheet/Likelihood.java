package org.holewise.school.sheet;

/**
 * A probability as people say it.
 *
 * @param word key of likely, possible or unlikely
 * @param share such as a number in ten, rounded; never none, never all
 */
public record Likelihood(String word, Said share) {
  private static final double LIKELY = 0.5;
  private static final double POSSIBLE = 0.1;
  private static final double NEARLY_ALL = 0.95;
  private static final double FEW = 0.01;

  static Likelihood of(double probability) {
    String word =
        probability >= LIKELY ? "likely" : probability >= POSSIBLE ? "possible" : "unlikely";
    return new Likelihood("sheet." + word, share(probability));
  }

  private static Said share(double probability) {
    if (probability >= NEARLY_ALL) {
      return Said.of("sheet.share.nearly-all");
    }
    if (probability >= POSSIBLE) {
      return Said.of("sheet.share.of", Math.min(9, Math.round(probability * 10)), 10);
    }
    return probability >= FEW
        ? Said.of("sheet.share.of", Math.round(probability * 100), 100)
        : Said.of("sheet.share.few");
  }
}
