package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.Cycle;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.OperatingPointSolver;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.Response;

/**
 * Takes readings of a bench that exists on paper only, each as the instrument takes it: a voltmeter
 * across, an ammeter's burden in series, an ohmmeter with the supply away.
 *
 * <p>A voltmeter is put in by Thévenin's theorem where the source resistance is small beside the
 * meter's or nothing in the circuit bends; else the loaded circuit is solved.
 */
public final class Instrument {
  /** Source resistance, as a part of the meter's, below which its bending under load is lost. */
  private static final double STIFF = 1e-3;

  /** Up to this an eye sees a lamp go on and off (Hz; common practice). */
  private static final double SEEN = 25;

  /** Times its greatest voltage that an ohmmeter is taken to give where nothing conducts. */
  private static final double ROOM = 2;

  private final Meter meter;
  private final double stiff;

  public Instrument(Meter meter) {
    this(meter, STIFF);
  }

  /**
   * @param stiff source resistance, as a part of the meter's, below which its bending is let go
   */
  public Instrument(Meter meter, double stiff) {
    this.meter = meter;
    this.stiff = stiff;
  }

  public Meter meter() {
    return meter;
  }

  /** The forecast of one reading; empty where the circuit has no solution. */
  public Optional<Forecast> read(Bench bench, Measure measure, Condition condition) {
    return taken(bench, measure, condition).map(forecast -> bench.named(condition, forecast));
  }

  private Optional<Forecast> taken(Bench bench, Measure measure, Condition condition) {
    if (measure instanceof Measure.Volts volts) {
      return volts(bench, volts, condition);
    }
    if (measure instanceof Measure.Amps amps) {
      return amps(bench, amps.pin(), condition);
    }
    if (measure instanceof Measure.Ohms ohms) {
      return (ohms.alone()
              ? alone(bench, ohms, condition)
              : ohms(bench, ohms.one(), ohms.other(), condition))
          .map(r -> forecast(Forecast.Sort.AMOUNT, Function.OHMS, r));
    }
    if (measure instanceof Measure.Joined joined) {
      return ohms(bench, joined.one(), joined.other(), condition)
          .map(r -> forecast(Forecast.Sort.BUZZER, Function.OHMS, r));
    }
    if (measure instanceof Measure.Level level) {
      return level(bench, level.pin(), condition);
    }
    if (measure instanceof Measure.Drop drop) {
      return drop(bench, drop, condition);
    }
    return measure instanceof Measure.Seen lamp
        ? seen(bench, lamp.ref(), condition)
        : swinging(bench, measure, condition);
  }

  private Optional<Forecast> swinging(Bench bench, Measure measure, Condition condition) {
    var ac = new AcInstrument(meter);
    if (measure instanceof Measure.AcVolts volts) {
      return ac.acVolts(bench, volts, condition);
    }
    if (measure instanceof Measure.Peak peak) {
      return ac.peak(bench, peak, condition);
    }
    if (measure instanceof Measure.Compared compared) {
      return ac.compared(bench, compared, condition);
    }
    if (measure instanceof Measure.Frequency frequency) {
      return ac.frequency(bench, frequency, condition);
    }
    throw new IllegalArgumentException("not measured here: " + measure);
  }

  private static Forecast forecast(Forecast.Sort sort, Function function, Response response) {
    return new Forecast(sort, function, response.value(), response.slopes(), false);
  }

  private Optional<Forecast> volts(Bench bench, Measure.Volts at, Condition condition) {
    Point red = bench.assembly().point(at.red());
    Point black = bench.assembly().point(at.black());
    double meterOhms = meter.range(Function.VOLTS, 0).ohms();
    return bench
        .point(condition)
        .map(
            point -> {
              boolean floating = point.floating(red) || point.floating(black);
              Response open = point.response(red, black);
              if (open.ohms() < stiff * meterOhms || point.circuit().linear()) {
                return loaded(open, floating);
              }
              Response under =
                  bench
                      .point(condition, List.of(new Edit.Across(red, black, meterOhms)))
                      .map(loaded -> loaded.response(red, black))
                      .orElse(open);
              return new Forecast(
                  Forecast.Sort.AMOUNT, Function.VOLTS, under.value(), under.slopes(), floating);
            });
  }

  private Forecast loaded(Response open, boolean floating) {
    return new Forecast(Forecast.Sort.AMOUNT, Function.VOLTS, open.value(), open.slopes(), floating)
        .scaled(meter.voltsShare(open.ohms()));
  }

  private Optional<Forecast> amps(Bench bench, Pin written, Condition condition) {
    Pin lead = bench.assembly().really(written);
    Point metal = new Point.AtPin(lead);
    Point strip = new Point.AtNet(bench.assembly().net(lead));
    double contact = bench.assembly().contact(lead);
    Optional<Forecast> shown = Optional.empty();
    for (Meter.Range range : meter.scale(Function.AMPS).ranges()) {
      double between = contact + range.ohms();
      shown =
          bench
              .point(condition, List.of(new Edit.InSeries(lead, range.ohms())))
              .map(point -> over(point.response(strip, metal), between, point.floating(metal)));
      if (shown.isEmpty() || Math.abs(shown.get().value()) < range.fullScale()) {
        return shown;
      }
    }
    return shown;
  }

  private static Forecast over(Response drop, double ohms, boolean floating) {
    return new Forecast(
        Forecast.Sort.AMOUNT,
        Function.AMPS,
        drop.value() / ohms,
        scaled(drop.slopes(), 1 / ohms),
        floating);
  }

  static double[] scaled(double[] slopes, double by) {
    double[] result = slopes.clone();
    for (int i = 0; i < result.length; i++) {
      result[i] *= by;
    }
    return result;
  }

  private Optional<Forecast> seen(Bench bench, String ref, Condition condition) {
    Pin first = looked(bench, ref);
    Optional<Cycle> cycle = bench.cycle(condition, first).filter(this::changes);
    return bench
        .point(condition)
        .map(point -> point.currentResponse(first))
        .map(r -> forecast(Forecast.Sort.LAMP, Function.AMPS, r))
        .map(still -> cycle.map(runs -> running(runs, still)).orElse(still));
  }

  /** The lead by whose current a part is looked at. */
  static Pin looked(Bench bench, String ref) {
    return bench.assembly().exercise().part(ref).orElseThrow().pins().get(0);
  }

  /** Whether an eye would call a lamp otherwise at one time and at another. */
  private boolean changes(Cycle cycle) {
    return Forecast.words(Forecast.Sort.LAMP, cycle.least(), cycle.most(), meter).size() > 1;
  }

  private static Forecast running(Cycle cycle, Forecast still) {
    Forecast.Sort sort = cycle.hertz() <= SEEN ? Forecast.Sort.FLICKER : Forecast.Sort.LAMP;
    return new Forecast(
        sort, Function.AMPS, cycle.mean(), new double[still.slopes().length], false);
  }

  /** A wire that nothing drives is neither low nor high, whatever its voltage. */
  private static Optional<Forecast> level(Bench bench, Pin pin, Condition condition) {
    return bench
        .point(condition)
        .map(point -> point.level(bench.assembly().really(pin)))
        .map(
            level ->
                level.undriven()
                    ? new Forecast(
                        Forecast.Sort.LEVEL,
                        Function.VOLTS,
                        0.5,
                        new double[level.response().slopes().length],
                        true)
                    : forecast(Forecast.Sort.LEVEL, Function.VOLTS, level.response()));
  }

  /** Resistance between two points of the circuit with its sources taken away. */
  private Optional<Response> ohms(Bench bench, Probe one, Probe other, Condition condition) {
    Circuit cold = cold(bench, condition);
    return Optional.of(ohms(cold, bench.assembly().point(one), bench.assembly().point(other)));
  }

  private static Circuit cold(Bench bench, Condition condition) {
    var away = new ArrayList<Edit>();
    for (Part part : bench.assembly().exercise().parts()) {
      if (part.kind().source()) {
        away.add(new Edit.Without(part.ref()));
      }
    }
    return bench.circuit(condition).undriven().with(away);
  }

  /** What the test current drops in the circuit with its sources taken away. */
  private Optional<Forecast> drop(Bench bench, Measure.Drop at, Condition condition) {
    Point anode = bench.assembly().point(at.a());
    Point cathode = bench.assembly().point(at.k());
    var test = new Edit.Source(anode, cathode, meter.diodeTest().volts(), meter.diodeTest().amps());
    return OperatingPointSolver.solve(cold(bench, condition).with(List.of(test)))
            instanceof OperatingPoint fed
        ? Optional.of(forecast(Forecast.Sort.AMOUNT, Function.DROP, fed.response(anode, cathode)))
        : Optional.empty();
  }

  /** Resistance of one part out of the board: every other part away, its leads on fresh strips. */
  private Optional<Response> alone(Bench bench, Measure.Ohms at, Condition condition) {
    if (!(at.one() instanceof Probe.AtPin one) || !(at.other() instanceof Probe.AtPin other)) {
      return Optional.empty();
    }
    Circuit whole = bench.assembly().bare(condition);
    var edits = new ArrayList<Edit>();
    for (Part part : bench.assembly().exercise().parts()) {
      if (!part.ref().equals(one.pin().ref())) {
        edits.add(new Edit.Without(part.ref()));
        continue;
      }
      for (Pin pin : part.pins()) {
        edits.add(new Edit.Moved(pin, whole.nets() + edits.size()));
      }
    }
    Point far = new Point.AtPin(other.pin());
    edits.add(new Edit.Across(far, whole.reference(), 0));
    return Optional.of(ohms(whole.with(edits), new Point.AtPin(one.pin()), far));
  }

  /**
   * Where nothing bends one current tells of all ranges. Else they are tried from the smallest on,
   * unless not even the largest one's current passes: it is the least.
   */
  private Response ohms(Circuit cold, Point one, Point other) {
    List<Meter.Range> ranges = meter.scale(Function.OHMS).ranges();
    double top = meter.scale(Function.OHMS).top();
    Response beyond =
        new Response(Double.POSITIVE_INFINITY, 0, new double[cold.parameters().size()]);
    if (cold.linear()) {
      return fed(cold, one, other, ranges.get(0)).filter(r -> r.value() < top).orElse(beyond);
    }
    if (fed(cold, one, other, ranges.get(ranges.size() - 1)).isEmpty()) {
      return beyond;
    }
    return ranges.stream()
        .flatMap(range -> fed(cold, one, other, range).stream())
        .findFirst()
        .orElse(beyond);
  }

  /** Resistance by a range's current; where something bends, empty where that is beyond it. */
  private Optional<Response> fed(Circuit cold, Point one, Point other, Meter.Range range) {
    double amps = meter.ohmsVolts() / range.fullScale();
    var feed = new Edit.Feed(one, other, amps);
    // A source that gives way has an answer where nothing conducts, and a feed where all does.
    var source = new Edit.Source(one, other, ROOM * meter.ohmsVolts(), amps);
    boolean linear = cold.linear();
    if (!linear
        && OperatingPointSolver.solve(cold.with(List.of(source))) instanceof OperatingPoint point) {
      Response volts = point.response(one, other);
      return volts.value() < meter.ohmsVolts() ? Optional.of(over(volts, amps)) : Optional.empty();
    }
    return OperatingPointSolver.solve(cold.with(List.of(feed))) instanceof OperatingPoint point
        ? Optional.of(point.response(one, other))
            .filter(volts -> linear || volts.value() < meter.ohmsVolts())
            .map(volts -> over(volts, amps))
        : Optional.empty();
  }

  private static Response over(Response volts, double amps) {
    return new Response(volts.value() / amps, 0, scaled(volts.slopes(), 1 / amps));
  }
}
