package org.holewise.engine.reading;

import java.util.List;
import java.util.Map;

/**
 * A model of multimeter: its ranges, what it puts into the circuit, and its limits of error, all
 * uniform. Immutable.
 *
 * @param scales by function
 * @param ohmsVolts voltage across the resistance measured at full scale (V)
 * @param buzzerBelow resistance below which the buzzer sounds (Ω)
 * @param diodeTest what the diode test feeds
 */
public record Meter(
    String name,
    Map<Function, Scale> scales,
    double ohmsVolts,
    double buzzerBelow,
    DiodeTest diodeTest) {

  /** A current (A) from a source that gives way at a voltage (V). */
  public record DiodeTest(double amps, double volts) {}

  /**
   * The ranges of a function, smallest first.
   *
   * @param gain limit of the gain error, a fraction
   * @param digits limit of the error in counts of the range
   * @param counts readings a range is divided into
   */
  public record Scale(List<Range> ranges, double gain, double digits, double counts) {
    public Scale {
      ranges = List.copyOf(ranges);
    }

    double top() {
      return ranges.get(ranges.size() - 1).fullScale();
    }
  }

  /** One range: full scale (SI) and input resistance or burden (Ω). */
  public record Range(double fullScale, double ohms) {}

  public Scale scale(Function function) {
    Scale scale = scales.get(function);
    if (scale == null) {
      throw new IllegalStateException(name + " has no " + function);
    }
    return scale;
  }

  /** The smallest range whose full scale exceeds the magnitude; the largest where none does. */
  public Range range(Function function, double magnitude) {
    List<Range> ranges = scale(function).ranges();
    return ranges.stream()
        .filter(range -> range.fullScale() > Math.abs(magnitude))
        .findFirst()
        .orElse(ranges.get(ranges.size() - 1));
  }

  /** One count of the range that a reading of this size is taken on (SI). */
  public double resolution(Function function, double magnitude) {
    return range(function, magnitude).fullScale() / scale(function).counts();
  }

  /** What a voltmeter leaves of a voltage behind a resistance (Ω), a fraction. */
  double voltsShare(double ohms) {
    double own = range(Function.VOLTS, 0).ohms();
    return own / (own + ohms);
  }

  public boolean overRange(Function function, double magnitude) {
    return Math.abs(magnitude) >= scale(function).top();
  }

  /** Limit of the digits' error of a reading of this size (SI). */
  public double digits(Function function, double magnitude) {
    return scale(function).digits() * resolution(function, magnitude);
  }

  /**
   * How much further than on its best range a reading's digits may be off (SI), told by the step
   * that it was written in: somebody who writes two decimals of a volt left the meter on a larger
   * range. The largest range is nobody's by oversight; where there is one range only, what was
   * written was rounded.
   *
   * @param step one unit in the last place written (SI); 0 where that is not known
   */
  public double coarser(Function function, double magnitude, double step) {
    List<Range> ranges = scale(function).ranges();
    double best = digits(function, magnitude);
    if (ranges.size() == 1) {
      return Math.max(0, step / 2 - best);
    }
    for (Range range : ranges.subList(0, ranges.size() - 1)) {
      double count = range.fullScale() / scale(function).counts();
      if (range.fullScale() > Math.abs(magnitude)) {
        best = Math.max(best, scale(function).digits() * count);
        if (count >= step * (1 - 1e-9)) {
          break;
        }
      }
    }
    return best - digits(function, magnitude);
  }

  /** Limit of the whole error of a reading of this size (SI). */
  public double limit(Function function, double magnitude) {
    return scale(function).gain() * Math.abs(magnitude) + digits(function, magnitude);
  }
}
