package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.reading.Forecast;
import org.holewise.engine.reading.Function;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Uncertainty;

/**
 * What one hypothesis says of the readings: numbers are jointly normal about the forecasts at the
 * hypothesis's own operating point, words and over-range have probabilities of their own.
 *
 * <p>Readings taken as numbers form the vector y with mean m and covariance S = G C Gᵀ + N (parts
 * and gain shared, digits not); log p(y) = −½ (y − m)ᵀ S⁻¹ (y − m) − ½ log det 2πS. A further
 * reading z with covariances k to y is then normal about f + kᵀ S⁻¹ (y − m) with variance v − kᵀ
 * S⁻¹ k.
 */
final class Prediction {
  /** Natural logarithm of 2π. */
  private static final double LOG_TWO_PI = StrictMath.log(2 * Math.PI);

  /** Log density lost by a reading that the hypothesis excludes: nothing is quite impossible. */
  private static final double EXCLUDED = -14;

  /** Log density lost besides where a circuit has no answer at all, such as a shorted source. */
  private static final double NO_ANSWER = 30;

  /** Part of a value that the laws and the linearisation may be off by. */
  private static final double LAW = 5e-4;

  private final Hypothesis hypothesis;
  private final Forecasts told;
  private final Instrument instrument;
  private final List<Observation> observations;
  private final Uncertainty uncertainty;
  private final List<Forecast> numbers = new ArrayList<>();
  private final List<String> numbered = new ArrayList<>();
  private final List<Double> surprises = new ArrayList<>();
  private final List<Double> coarser = new ArrayList<>();
  private final List<Forecast> forecasts = new ArrayList<>();
  private double logLikelihood;
  private double misfit;
  private Optional<LinearSolverDense<DMatrixRMaj>> solver = Optional.empty();
  private DMatrixRMaj weighted = new DMatrixRMaj(0, 1);

  Prediction(Hypothesis hypothesis, Forecasts told, List<Observation> observations) {
    this.hypothesis = hypothesis;
    this.told = told;
    this.instrument = told.instrument;
    this.observations = observations;
    this.uncertainty = uncertainty(told.parameters(), hypothesis, instrument.meter());
    for (Observation observation : observations) {
      observe(observation);
    }
    if (!numbers.isEmpty()) {
      weigh();
    }
  }

  private static Uncertainty uncertainty(
      List<Parameter> parameters, Hypothesis hypothesis, Meter meter) {
    Uncertainty usual = Uncertainty.of(parameters, meter);
    hypothesis
        .vague()
        .forEach(
            vague -> {
              for (int k = 0; k < parameters.size(); k++) {
                if (parameters.get(k).name().startsWith(vague.parameter())) {
                  double deviation = vague.share() * parameters.get(k).nominal() + vague.si();
                  usual.variances()[k] = deviation * deviation;
                }
              }
            });
    return usual;
  }

  private void observe(Observation observation) {
    Optional<Slip> slip = hypothesis.slip().filter(s -> s.concerns(observation.id()));
    Optional<Forecast> read = forecast(observation, slip);
    if (read.isEmpty()) {
      exclude(NO_ANSWER);
      return;
    }
    if (slip.isPresent() && slip.get() instanceof Slip.Anything) {
      logLikelihood -= StrictMath.log(2 * anywhere(observation));
      return;
    }
    Forecast forecast = read.get();
    forecasts.add(forecast);
    if (!(observation.shown() instanceof Shown.Amount amount)) {
      double words = words(forecast, observation.shown());
      logLikelihood += words;
      misfit -= 2 * words;
    } else if (forecast.shown(instrument.meter()) instanceof Shown.OverRange) {
      exclude(StrictMath.log(anywhere(observation)));
    } else {
      numbers.add(forecast);
      numbered.add(observation.id());
      coarser.add(observation.coarser());
      surprises.add(amount.value() - forecast.value());
    }
  }

  private Optional<Forecast> forecast(Observation observation, Optional<Slip> slip) {
    Observation taken =
        slip.isPresent() && slip.get() instanceof Slip.Exchanged exchanged
            ? named(exchanged.instead(observation.id()))
            : observation;
    Optional<Forecast> read = told.of(taken.measure(), taken.condition());
    if (slip.isPresent() && slip.get() instanceof Slip.Leads) {
      return read.map(Forecast::negated);
    }
    return slip.isPresent() && slip.get() instanceof Slip.Scaled scaled
        ? read.map(forecast -> forecast.scaled(scaled.factor()))
        : read;
  }

  private Observation named(String id) {
    return observations.stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
  }

  /** Full scale of the range that the reading was taken on (SI): a slip may show anything on it. */
  private double anywhere(Observation observation) {
    Function function = org.holewise.engine.reading.Taken.function(observation.measure());
    double size = observation.shown() instanceof Shown.Amount amount ? amount.value() : 0;
    return instrument.meter().range(function, size).fullScale();
  }

  private double words(Forecast forecast, Shown shown) {
    double deviation = Math.sqrt(uncertainty.variance(forecast));
    return StrictMath.log(
        Math.max(
            forecast.probability(shown, deviation, instrument.meter()), StrictMath.exp(EXCLUDED)));
  }

  private void weigh() {
    int n = numbers.size();
    var covariance = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double shared = uncertainty.covariance(numbers.get(i), numbers.get(j));
        covariance.set(i, j, shared);
        covariance.set(j, i, shared);
      }
      covariance.set(i, i, variance(numbers.get(i)) + coarser.get(i) * coarser.get(i) / 3);
    }
    var y = new DMatrixRMaj(n, 1);
    for (int i = 0; i < n; i++) {
      y.set(i, 0, surprises.get(i));
    }
    var cholesky = LinearSolverFactory_DDRM.chol(n);
    if (!cholesky.setA(covariance.copy())) {
      // Slopes so steep that what they share is lost in rounding: each reading counts for itself.
      cholesky.setA(CommonOps_DDRM.diag(CommonOps_DDRM.extractDiag(covariance, null).data));
    }
    weighted = new DMatrixRMaj(n, 1);
    cholesky.solve(y, weighted);
    double square = 0;
    double logDeterminant = 0;
    DMatrixRMaj lower =
        ((org.ejml.interfaces.decomposition.CholeskyDecomposition_F64<DMatrixRMaj>)
                cholesky
                    .<org.ejml.interfaces.decomposition.CholeskyDecomposition_F64<DMatrixRMaj>>
                        getDecomposition())
            .getT(null);
    for (int i = 0; i < n; i++) {
      square += surprises.get(i) * weighted.get(i, 0);
      logDeterminant += 2 * StrictMath.log(Math.abs(lower.get(i, i)));
    }
    misfit += square;
    solver = Optional.of(cholesky);
    logLikelihood -= 0.5 * (square + logDeterminant + n * LOG_TWO_PI);
  }

  private double variance(Forecast forecast) {
    double law = LAW * forecast.value();
    double count = instrument.meter().resolution(forecast.function(), forecast.value());
    double least = least(forecast.function());
    return uncertainty.variance(forecast) + law * law + count * count / 12 + least * least;
  }

  /** What good contacts and a meter's own leads do to a reading (SI; common practice). */
  private static double least(Function function) {
    return switch (function) {
      case VOLTS, DROP, ACVOLTS -> 2e-3;
      case AMPS -> 2e-6;
      case OHMS -> 0.3;
      case PEAK -> 5e-3;
      case RATIO -> 1e-3;
      case DECIBELS -> 0.02;
      case FREQUENCY -> 0.1;
    };
  }

  double logLikelihood() {
    return logLikelihood;
  }

  /**
   * Squared deviations of the readings from what is predicted, all that is shared taken out; words
   * count as numbers that are as unlikely.
   */
  double misfit() {
    return misfit;
  }

  private void exclude(double more) {
    logLikelihood += EXCLUDED - more;
    misfit += 2 * (more - EXCLUDED);
  }

  /**
   * How far a reading by itself is from what is predicted, in deviations; of a word, of a number
   * that were as unlikely. 0 where anything is as likely.
   */
  double deviation(Observation observation) {
    Optional<Slip> slip = hypothesis.slip().filter(s -> s.concerns(observation.id()));
    if (slip.isPresent() && slip.get() instanceof Slip.Anything) {
      return 0;
    }
    Optional<Forecast> read = forecast(observation, slip);
    if (read.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Forecast forecast = read.get();
    if (!(observation.shown() instanceof Shown.Amount amount)) {
      return Math.sqrt(-2 * words(forecast, observation.shown()));
    }
    double coarse = observation.coarser();
    return forecast.shown(instrument.meter()) instanceof Shown.OverRange
        ? Double.POSITIVE_INFINITY
        : (amount.value() - forecast.value()) / Math.sqrt(variance(forecast) + coarse * coarse / 3);
  }

  /** What the instrument would show, before anything was read. */
  Optional<Shown> shown(Observation observation) {
    return told.of(observation.measure(), observation.condition())
        .map(forecast -> forecast.shown(instrument.meter()));
  }

  /** What the other readings make of one (SI), and how many deviations it is from that. */
  record Beside(double value, double deviation) {}

  /**
   * Each number beside the others, by id: with P = S⁻¹ and w = P (y − m), reading i is w_i / P_ii
   * from its mean given the others, with variance 1 / P_ii.
   */
  Map<String, Beside> beside() {
    Map<String, Beside> beside = new LinkedHashMap<>();
    if (solver.isEmpty() || numbers.size() < 2) {
      return beside;
    }
    int n = numbers.size();
    var inverse = new DMatrixRMaj(n, n);
    solver.get().solve(CommonOps_DDRM.identity(n), inverse);
    for (int i = 0; i < n; i++) {
      double off = weighted.get(i, 0) / inverse.get(i, i);
      double read = numbers.get(i).value() + surprises.get(i);
      beside.put(numbered.get(i), new Beside(read - off, off * Math.sqrt(inverse.get(i, i))));
    }
    return beside;
  }

  /** What a further reading would show, given those already taken; empty where it has no value. */
  Optional<Outlook> outlook(Measure measure, Condition condition) {
    return told.of(measure, condition)
        .filter(f -> !(f.shown(instrument.meter()) instanceof Shown.Word))
        .map(
            f ->
                f.shown(instrument.meter()) instanceof Shown.OverRange ? Outlook.BEYOND : given(f));
  }

  private Outlook given(Forecast forecast) {
    if (solver.isEmpty()) {
      return new Outlook(forecast.value(), variance(forecast));
    }
    int n = numbers.size();
    var shared = new DMatrixRMaj(n, 1);
    for (int i = 0; i < n; i++) {
      shared.set(i, 0, uncertainty.covariance(numbers.get(i), forecast));
    }
    var solved = new DMatrixRMaj(n, 1);
    solver.get().solve(shared.copy(), solved);
    double mean = forecast.value();
    double explained = 0;
    for (int i = 0; i < n; i++) {
      mean += shared.get(i, 0) * weighted.get(i, 0);
      explained += shared.get(i, 0) * solved.get(i, 0);
    }
    double least = variance(forecast) - uncertainty.variance(forecast);
    return new Outlook(mean, Math.max(variance(forecast) - explained, least));
  }

  /** Mean and variance of a reading not yet taken (SI). */
  record Outlook(double mean, double variance) {
    /** More than the meter shows, either way. */
    static final Outlook BEYOND = new Outlook(Double.POSITIVE_INFINITY, 1);
  }

  /** How many deviations apart two hypotheses see the same readings, squared. */
  double apart(Prediction other) {
    double square = 0;
    for (int i = 0; i < Math.min(forecasts.size(), other.forecasts.size()); i++) {
      Forecast one = forecasts.get(i);
      Forecast two = other.forecasts.get(i);
      double difference = one.value() - two.value();
      if (Double.isInfinite(one.value()) || Double.isInfinite(two.value())) {
        square += one.value() == two.value() ? 0 : Double.POSITIVE_INFINITY;
      } else if (difference != 0) {
        square += difference * difference / Math.min(variance(one), variance(two));
      }
    }
    return square;
  }
}
