package org.holewise.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The colour code of IEC 60062 for fixed resistors: two figures and a multiplier (20 %), the same
 * with a tolerance, three figures with multiplier and tolerance, and a sixth band with the
 * temperature coefficient. The first figure is not black (common practice; a single black band is a
 * link, which is not read here).
 */
public final class ColourCode {

  private ColourCode() {}

  /** What three to six bands say, read from the first on. */
  public static ColourReading read(List<Colour> bands) {
    int count = bands.size();
    if (count < 3 || count > 6) {
      return new ColourReading.NoCode(count);
    }
    int figures = count < 5 ? 2 : 3;
    for (int band = 0; band < count; band++) {
      if (!fits(bands.get(band), band, figures)) {
        return new ColourReading.NoCode(band);
      }
    }
    double tolerance = at(bands, figures + 1).tolerance().orElseThrow();
    OptionalInt ppm = count == 6 ? bands.get(5).temperatureCoefficient() : OptionalInt.empty();
    return new CodedResistor(ohms(bands, figures), tolerance, ppm);
  }

  /** What the same bands say to somebody who starts at the wrong end. */
  public static ColourReading reversed(List<Colour> bands) {
    List<Colour> backwards = new ArrayList<>(bands);
    Collections.reverse(backwards);
    return read(backwards);
  }

  /**
   * The bands of a resistor.
   *
   * @param ohms nominal value (Ω)
   * @param tolerance limit either way, as a fraction; 0.2 with three bands
   * @param count three, four or five bands
   * @return empty where that many bands cannot carry the value or no colour the tolerance
   */
  public static Optional<List<Colour>> bands(double ohms, double tolerance, int count) {
    if (count < 3 || count > 5 || !(ohms > 0 && ohms <= Double.MAX_VALUE)) {
      return Optional.empty();
    }
    int figures = count < 5 ? 2 : 3;
    List<Colour> bands = new ArrayList<>();
    BigDecimal exact = new BigDecimal(ohms, new MathContext(12)).stripTrailingZeros();
    if (exact.precision() > figures || !addFigures(exact, figures, bands)) {
      return Optional.empty();
    }
    Optional<Colour> last = ofTolerance(tolerance).filter(c -> count > 3 || c == Colour.NONE);
    last.filter(colour -> colour != Colour.NONE).ifPresent(bands::add);
    return last.filter(c -> bands.size() == count).map(colour -> List.copyOf(bands));
  }

  private static boolean addFigures(BigDecimal exact, int figures, List<Colour> bands) {
    int power = exact.precision() - exact.scale() - figures;
    if (power < Colour.SILVER.multiplier().orElseThrow() || power > 9) {
      return false;
    }
    String digits = exact.movePointLeft(power).toBigIntegerExact().toString();
    digits.chars().forEach(digit -> bands.add(ofPower(digit - '0')));
    bands.add(ofPower(power));
    return true;
  }

  /** The colour of a multiplier, which for 0 to 9 is also the colour of that figure. */
  private static Colour ofPower(int power) {
    return Arrays.stream(Colour.values())
        .filter(colour -> colour.multiplier().equals(OptionalInt.of(power)))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Colour> ofTolerance(double tolerance) {
    return Arrays.stream(Colour.values())
        .filter(colour -> Math.abs(colour.tolerance().orElse(-1) - tolerance) < 1e-9)
        .findFirst();
  }

  private static boolean fits(Colour colour, int band, int figures) {
    if (band < figures) {
      return band == 0 ? colour.figure().orElse(0) > 0 : colour.figure().isPresent();
    }
    return switch (band - figures) {
      case 0 -> colour.multiplier().isPresent();
      case 1 -> colour.tolerance().isPresent();
      default -> colour.temperatureCoefficient().isPresent();
    };
  }

  private static Colour at(List<Colour> bands, int band) {
    return band < bands.size() ? bands.get(band) : Colour.NONE;
  }

  private static double ohms(List<Colour> bands, int figures) {
    StringBuilder number = new StringBuilder();
    bands.subList(0, figures).forEach(band -> number.append(band.figure().orElseThrow()));
    int power = bands.get(figures).multiplier().orElseThrow();
    return Double.parseDouble(number.append('e').append(power).toString());
  }
}
