package org.holewise.engine.diagnosis;

import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;

/** A reading that may be asked for. */
record Candidate(Measure measure, Condition condition, Effort effort) {

  /** What taking it means for a bench, the easiest and safest first. */
  enum Effort {
    /** Two probes and nothing else. */
    VOLTS(0),
    /** The supply is taken off. */
    OHMS(0),
    /** The circuit is opened, and a meter that is a short is put in. */
    AMPS(0.2);

    /** So much more than the others' it must tell to be asked for (bit; judgement). */
    final double more;

    Effort(double more) {
      this.more = more;
    }
  }
}
