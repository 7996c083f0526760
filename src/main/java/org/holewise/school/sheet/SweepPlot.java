package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.marking.ComparedGain;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.GainCurve;
import org.holewise.engine.reading.Shown;

/**
 * Gain over frequency as a picture and as a table: a logarithmic axis of frequency, decibels
 * upwards. Immutable.
 *
 * @param title what is compared to what
 * @param wanted the schematic's curve, as points of a line
 * @param built the build's, empty where it is the same or below the picture
 * @param measured readings that were taken
 * @param hertz lines of the axis of frequency
 * @param decibels lines of the axis of gain
 * @param rows the same in numbers, one a decade
 */
public record SweepPlot(
    Said title,
    String wanted,
    String built,
    List<Taken> measured,
    List<Tick> hertz,
    List<Tick> decibels,
    List<Row> rows) {
  private static final double LEFT = 58;
  private static final double TOP = 12;
  private static final double WIDE = 272;
  private static final double HIGH = 180;

  /** Lines of gain are so far apart (dB), and so much is shown below the greatest. */
  private static final int EVERY = 10;

  private static final int DEEP = 60;

  private static final int MOST_NAMED = 5;

  /** −3 dB: half the power is left. */
  private static final double HALF_POWER = 10 * Math.log10(0.5);

  /** A reading on the picture. */
  public record Taken(double x, double y, String label) {}

  /** A line at a number. */
  public record Tick(double at, String text) {}

  /** A frequency and the gain there; {@code built} is empty where it is the same. */
  public record Row(String hertz, String wanted, String built) {}

  /** Where everything lies: which decade is on the left and which on the right, and decibels. */
  private record Scale(double from, double to, double least, double most) {
    double x(double hertz) {
      return rounded(LEFT + WIDE * (Math.log10(hertz) - from) / (to - from));
    }

    double y(double decibels) {
      double inside = Math.max(least, Math.min(most, decibels));
      return rounded(TOP + HIGH * (most - inside) / (most - least));
    }

    /** From where it comes into the picture to where it leaves it; nothing where it never does. */
    String line(GainCurve curve) {
      IntSummaryStatistics inside =
          IntStream.range(0, curve.points().size())
              .filter(k -> curve.points().get(k).decibels() >= least)
              .summaryStatistics();
      return inside.getCount() == 0
          ? ""
          : IntStream.rangeClosed(inside.getMin(), inside.getMax())
              .mapToObj(curve.points()::get)
              .map(point -> x(point.hertz()) + "," + y(point.decibels()))
              .collect(Collectors.joining(" "));
    }
  }

  static SweepPlot of(ComparedGain sweep, KeptMark mark) {
    Scale scale = scale(sweep);
    var compared = (Measure.Compared) sweep.readings().get(0).measure();
    return new SweepPlot(
        Said.of("sheet.sweep.of", pair(compared.of()), pair(compared.to())),
        scale.line(sweep.wanted()),
        sweep.built().map(scale::line).orElse(""),
        sweep.readings().stream().flatMap(r -> taken(r, sweep, mark, scale).stream()).toList(),
        decades(scale).mapToObj(k -> new Tick(scale.x(Math.pow(10, k)), text(k, scale))).toList(),
        IntStream.rangeClosed((int) scale.least() / EVERY, (int) scale.most() / EVERY)
            .map(k -> k * EVERY)
            .mapToObj(dB -> new Tick(scale.y(dB), signed(dB)))
            .toList(),
        decades(scale).mapToObj(k -> row(Math.pow(10, k), sweep)).toList());
  }

  private static Scale scale(ComparedGain sweep) {
    List<GainCurve.Point> points = new ArrayList<>(sweep.wanted().points());
    sweep.built().ifPresent(curve -> points.addAll(curve.points()));
    double most = points.stream().mapToDouble(GainCurve.Point::decibels).max().orElse(0);
    double least = points.stream().mapToDouble(GainCurve.Point::decibels).min().orElse(0);
    double top = EVERY * Math.floor(most / EVERY + 1);
    double bottom = EVERY * Math.floor(Math.max(least, top - DEEP) / EVERY);
    return new Scale(
        Math.log10(points.get(0).hertz()),
        Math.log10(points.get(points.size() - 1).hertz()),
        Math.min(bottom, top - 2 * EVERY),
        top);
  }

  private static IntStream decades(Scale scale) {
    return IntStream.rangeClosed((int) Math.round(scale.from()), (int) Math.round(scale.to()));
  }

  /** Of many decades every second is named, so that the names have room. */
  private static String text(int decade, Scale scale) {
    boolean named = scale.to() - scale.from() <= MOST_NAMED || (decade - scale.from()) % 2 == 0;
    return named ? hertz(Math.pow(10, decade)) : "";
  }

  private static List<Taken> taken(
      Reading reading, ComparedGain sweep, KeptMark mark, Scale scale) {
    return mark.readings().stream()
        .filter(judged -> judged.id().equals(reading.id()))
        .flatMap(judged -> judged.measured().stream())
        .flatMap(shown -> taken(reading, shown, sweep, scale).stream())
        .toList();
  }

  private static List<Taken> taken(Reading reading, Shown shown, ComparedGain sweep, Scale scale) {
    if (!(shown instanceof Shown.Amount amount)) {
      return List.of();
    }
    if (reading.measure() instanceof Measure.Ratio ratio) {
      double decibels =
          ratio.decibel() ? amount.value() : 20 * Math.log10(Math.abs(amount.value()));
      return reading.hertz().stream()
          .mapToObj(hertz -> new Taken(scale.x(hertz), scale.y(decibels), reading.label()))
          .toList();
    }
    GainCurve curve = sweep.built().orElse(sweep.wanted());
    double most = curve.points().stream().mapToDouble(GainCurve.Point::decibels).max().orElse(0);
    boolean there =
        amount.unit() == Unit.HERTZ
            && scale.from() <= Math.log10(amount.value())
            && Math.log10(amount.value()) <= scale.to();
    double drop = reading.measure() instanceof Measure.Corner ? HALF_POWER : 0;
    return there
        ? List.of(new Taken(scale.x(amount.value()), scale.y(most + drop), reading.label()))
        : List.of();
  }

  private static Row row(double hertz, ComparedGain sweep) {
    return new Row(
        hertz(hertz),
        at(sweep.wanted(), hertz),
        sweep.built().map(curve -> at(curve, hertz)).orElse(""));
  }

  private static String at(GainCurve curve, double hertz) {
    Predicate<GainCurve.Point> here = point -> Math.abs(point.hertz() / hertz - 1) < 1e-6;
    OptionalDouble decibels =
        curve.points().stream().filter(here).mapToDouble(GainCurve.Point::decibels).findFirst();
    return decibels.isPresent()
        ? String.format(Locale.ROOT, "%.1f dB", decibels.getAsDouble())
            .replaceFirst("^-0\\.0 ", "0.0 ")
            .replace('-', '−')
        : "—";
  }

  private static String hertz(double hertz) {
    return Display.value(hertz, Unit.HERTZ);
  }

  private static String signed(int decibels) {
    return decibels < 0 ? "−" + -decibels : String.valueOf(decibels);
  }

  private static String pair(Measure.Pair pair) {
    return pair.red() + " – " + pair.black();
  }

  private static double rounded(double at) {
    return Math.round(at * 10) / 10.0;
  }

  /** Whether the build has a curve of its own, in the picture or below it. */
  public boolean otherwise() {
    return rows.stream().anyMatch(row -> !row.built().isEmpty());
  }

  public double left() {
    return LEFT;
  }

  public double top() {
    return TOP;
  }

  public double right() {
    return LEFT + WIDE;
  }

  public double bottom() {
    return TOP + HIGH;
  }
}
