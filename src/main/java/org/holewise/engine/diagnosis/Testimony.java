package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.diagnosis.Evidence.Bearing;
import org.holewise.engine.diagnosis.Evidence.Reads;
import org.holewise.engine.diagnosis.Evidence.Sign;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Taken;

/**
 * Finds the readings that speak for a fault: those that are far from what the circuit as entered
 * would give, and near to what it would give with the fault. Where none is far by itself, each is
 * held against what the others make of it.
 */
final class Testimony {
  /**
   * Deviations from which on a reading does not fit; a word's are those of a number as unlikely.
   */
  private static final double FAR = 3;

  /** Deviations within which it fits; or half of those that are to be explained. */
  private static final double NEAR = 2;

  private static final int MOST = 5;

  /** Difference of logarithms within which two are as likely as each other. */
  private static final double AS_LIKELY = 1;

  /** Part of the larger of two numbers below which the smaller is next to nothing. */
  private static final double SLIGHT = 0.02;

  /** Times that a number must be another to be far from it. */
  private static final double TIMES = 2;

  private final Prediction sound;
  private final List<Observation> observations;
  private final Meter meter;

  Testimony(Prediction sound, List<Observation> observations, Meter meter) {
    this.sound = sound;
    this.observations = observations;
    this.meter = meter;
  }

  /** A reading's deviation from what was entered, and what would fit. */
  private record Off(Observation observation, double deviation, Optional<Shown> expected) {}

  Evidence of(Prediction fault) {
    double more = fault.logLikelihood() - sound.logLikelihood();
    if (more < -AS_LIKELY) {
      return new Evidence(Bearing.AGAINST, List.of());
    }
    List<Sign> signs = signs(alone(fault), false, MOST);
    if (signs.isEmpty()) {
      signs = signs(beside(fault), true, 1);
    }
    if (!signs.isEmpty()) {
      return new Evidence(Bearing.FOR, signs);
    }
    return new Evidence(more > AS_LIKELY ? Bearing.TOGETHER : Bearing.NEITHER, List.of());
  }

  private List<Off> alone(Prediction fault) {
    var off = new ArrayList<Off>();
    for (Observation observation : observations) {
      double deviation = Math.abs(sound.deviation(observation));
      if (explained(deviation, Math.abs(fault.deviation(observation)))) {
        Optional<Shown> expected = observation.asBuilt().or(() -> sound.shown(observation));
        off.add(new Off(observation, deviation, expected));
      }
    }
    return off;
  }

  private List<Off> beside(Prediction fault) {
    Map<String, Prediction.Beside> entered = sound.beside();
    Map<String, Prediction.Beside> faulty = fault.beside();
    var off = new ArrayList<Off>();
    for (Observation observation : observations) {
      Optional<Prediction.Beside> own = Optional.ofNullable(entered.get(observation.id()));
      double deviation = own.map(Prediction.Beside::deviation).map(Math::abs).orElse(0.0);
      double left =
          Optional.ofNullable(faulty.get(observation.id()))
              .map(other -> Math.abs(other.deviation()))
              .orElse(0.0);
      if (own.isPresent() && explained(deviation, left)) {
        var expected =
            new Shown.Amount(own.get().value(), observation.measure().unit().orElseThrow());
        off.add(new Off(observation, deviation, Optional.of(expected)));
      }
    }
    return off;
  }

  private static boolean explained(double deviation, double left) {
    return deviation >= FAR && left <= Math.max(NEAR, deviation / 2);
  }

  /** Beside the others only the one that is furthest off: it puts the others off too. */
  private List<Sign> signs(List<Off> off, boolean beside, int most) {
    return off.stream()
        .sorted(Comparator.comparingDouble(Off::deviation).reversed())
        .limit(most)
        .map(one -> sign(one, beside))
        .toList();
  }

  private Sign sign(Off off, boolean beside) {
    Observation observation = off.observation();
    Optional<Shown> expected = off.expected().map(shown -> seen(shown, observation));
    return new Sign(
        observation.id(),
        reads(observation.shown(), expected),
        beside,
        observation.shown(),
        expected);
  }

  /** What no meter would show is nothing. */
  private Shown seen(Shown shown, Observation observation) {
    if (!(shown instanceof Shown.Amount amount)) {
      return shown;
    }
    var function = Taken.function(observation.measure());
    double count = meter.resolution(function, amount.value());
    return Math.abs(amount.value()) < count / 2 ? new Shown.Amount(0, amount.unit()) : shown;
  }

  static Reads reads(Shown measured, Optional<Shown> expected) {
    if (!(measured instanceof Shown.Amount read)
        || !(expected.orElse(measured) instanceof Shown.Amount fits)
        || expected.isEmpty()) {
      return Reads.OTHERWISE;
    }
    double size = Math.abs(read.value());
    double usual = Math.abs(fits.value());
    if (size <= SLIGHT * usual) {
      return Reads.NOTHING;
    }
    if (usual > SLIGHT * size && read.value() * fits.value() < 0) {
      return Reads.WRONG_SIGN;
    }
    return size < usual
        ? size * TIMES < usual ? Reads.FAR_LOW : Reads.LOW
        : size > usual * TIMES ? Reads.FAR_HIGH : Reads.HIGH;
  }
}
