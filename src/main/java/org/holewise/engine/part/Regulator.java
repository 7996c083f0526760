package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Unit;

/**
 * A three-terminal regulator of the 78xx family: dropout 2 V (sheet LM78XX, typical at 1 A), its
 * own current 5 mA, its voltage within 4 % (4.80–5.20 V), 1 A and 35 V at most (sheet).
 */
final class Regulator implements Kind {
  private static final double MOST_AMPS = 1;
  private static final double MOST_INPUT = 35;

  @Override
  public String name() {
    return "regulator";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        Field.Number.required("volts", Unit.VOLT, 0.5, 100, "Output voltage."),
        Field.Number.fallback(
            "dropout", Unit.VOLT, 0, 10, 2, "How far the input must be above the output."),
        Field.Number.fallback("quiescent", Unit.AMP, 1e-9, 1, 5e-3, "Current of its own."),
        Field.Number.fallback(
            "tolerance", Unit.FRACTION, 0, 0.5, 0.04, "Limit of its voltage, uniform inside."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("in", "gnd", "out");
  }

  @Override
  public void connect(Part part, Network network) {
    network.device(
        new RegulatorLaw(
            part.number("dropout"),
            part.number("quiescent"),
            Parameter.within(
                part.ref() + ".volts", part.number("volts"), part.number("tolerance"))),
        network.pin("in"),
        network.pin("out"),
        network.pin("gnd"));
  }

  @Override
  public List<Leg> legs(Fields fields) {
    return List.of(
        new Leg("in", "in", Leg.Role.INPUT),
        new Leg("gnd", "gnd", Leg.Role.MINUS),
        new Leg("out", "out", Leg.Role.OUTPUT));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.InLine(3);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(
        new Limit.Current("out", MOST_AMPS, MOST_AMPS), new Limit.Supply("in", "gnd", MOST_INPUT));
  }
}
