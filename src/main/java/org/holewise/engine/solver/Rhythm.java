package org.holewise.engine.solver;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.part.Pin;

/**
 * A clock that a circuit makes of itself: a capacitor that logic charges and discharges between two
 * thresholds. Immutable.
 *
 * @param part whose logic swings
 * @param output which of its outputs is the clock
 * @param beats from one turn to the next, through one period
 * @param rest the state of its logic on the first beat, as it starts a settled circuit
 * @param hold where the capacitor is held meanwhile
 * @param course by what another circuit is told to have the same rhythm
 */
record Rhythm(
    int part, int output, List<Beat> beats, LogicState rest, Drives.Hold hold, Course course) {

  /** How long one stretch lasts (s), and what the logic looks like through it. */
  record Beat(double seconds, LogicState state, double from, double to) {}

  /**
   * What a circuit shows on its way through one period.
   *
   * @param turns from one change of the logic to the next
   * @param sights by turn: what {@link Relaxation} sees at its ends and in its middle
   * @param near a point on the way
   */
  record Course(List<Beat> turns, List<double[]> sights, OperatingPoint near) {}

  double period() {
    return beats.stream().mapToDouble(Beat::seconds).sum();
  }

  /** The rhythm that a circuit's logic and capacitors make; empty where they come to rest. */
  static Optional<Rhythm> of(Circuit circuit) {
    if (!circuit.logical()) {
      return Optional.empty();
    }
    for (int part = 0; part < circuit.mounted.length; part++) {
      for (int k = 0; k < circuit.mounted[part].stamp().capacitors.size(); k++) {
        Optional<Rhythm> found = new Relaxation(circuit, part, k).rhythm();
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** The same rhythm where a circuit goes the way that is known of another; else any it makes. */
  static Optional<Rhythm> same(Optional<Rhythm> other, Circuit circuit) {
    return kept(other, circuit).or(() -> of(circuit));
  }

  private static Optional<Rhythm> kept(Optional<Rhythm> other, Circuit circuit) {
    return other.filter(known -> Relaxation.like(circuit, known).goes(known.course()));
  }

  /** That of a circuit which hardly differs from one with this rhythm; else any that it makes. */
  static Optional<Rhythm> like(Optional<Rhythm> other, Circuit circuit) {
    return kept(other, circuit)
        .or(
            () ->
                other.flatMap(
                    known -> Relaxation.like(circuit, known).again(known.beats().get(0).from())))
        .or(() -> of(circuit));
  }

  Pin clock(Circuit circuit) {
    int pin = circuit.mounted[part].stamp().gates.get(0).outputs().get(output).pin();
    return circuit.plan.pinOf(part, pin);
  }
}
