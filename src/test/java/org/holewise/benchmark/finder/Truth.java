package org.holewise.benchmark.finder;

import java.util.Map;
import java.util.Optional;
import org.holewise.engine.board.Build;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.netlist.AsBuilt;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Assembly;

/**
 * What really stands on a bench: real parts in real holes.
 *
 * @param parts the exercise with the parts that are really there
 * @param takenFor the lead that is really where the record has another
 */
record Truth(Exercise parts, Build build, Map<Pin, Pin> takenFor) {

  Assembly assembly() {
    AsBuilt nets = AsBuilt.of(build, parts.parts());
    return Assembly.of(parts, nets.netlist(), nets::netAt);
  }

  /** The measure with its probes on what is really there. */
  Optional<Measure> really(Measure measure) {
    if (measure instanceof Measure.Volts volts) {
      return Optional.of(new Measure.Volts(really(volts.red()), really(volts.black())));
    }
    if (measure instanceof Measure.Ohms ohms && !ohms.alone()) {
      return Optional.of(new Measure.Ohms(really(ohms.one()), really(ohms.other()), false));
    }
    if (measure instanceof Measure.Amps amps) {
      return Optional.of(new Measure.Amps(takenFor.getOrDefault(amps.pin(), amps.pin())));
    }
    return measure instanceof Measure.Seen ? Optional.of(measure) : Optional.empty();
  }

  private Probe really(Probe probe) {
    return probe instanceof Probe.AtPin at
        ? Probe.at(takenFor.getOrDefault(at.pin(), at.pin()))
        : probe;
  }
}
