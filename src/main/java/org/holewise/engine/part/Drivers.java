package org.holewise.engine.part;

import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;

/** Output stages of the families. */
final class Drivers {
  /** Two junctions above a bipolar output that is high: 5 V less 3.4 V, at this current. */
  private static final double DROP = 1.6;

  private static final double DROP_AMPS = 0.4e-3;

  /** n·VT of the two in a row (V). */
  private static final double BEND = 0.08;

  private static final double DROP_SPREAD = 0.1;

  private Drivers() {}

  static Driver of(String ref, Family family, int pin) {
    Device low =
        new OutputLaw(Parameter.within(ref + ".low", family.low(), family.share()), family.at());
    return new Driver(pin, high(ref, family), low);
  }

  private static Device high(String ref, Family family) {
    return family.bipolar()
        ? new DiodeLaw(
            new Junction(BEND, family.high(), DROP_AMPS),
            new Parameter(ref + ".high", DROP, new Spread.Normal(DROP_SPREAD)))
        : new OutputLaw(
            Parameter.within(ref + ".high", family.high(), family.share()), family.at());
  }
}
