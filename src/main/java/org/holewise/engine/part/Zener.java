package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A zener diode: forward a small silicon diode; in reverse the same law mirrored about its
 * breakdown voltage. The breakdown's current is 5 mA where none is given, as data sheets of
 * half-watt zeners rate it (from memory), and no resistance is added: the exponential's own, 8 Ω at
 * 5 mA, is of their order. The spreads are the project's law for junctions.
 */
final class Zener implements Kind {
  private static final DiodeType FORWARD = DiodeType.SMALL;

  /** Power of the common half-watt zeners (W); common practice. */
  private static final double WATTS = 0.5;

  @Override
  public String name() {
    return "zener";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "Maker's type number."),
        CurvePoint.group("forward", 10, "A point of the forward curve."),
        new Field.Group("breakdown", breakdown(), true, "A point of the reverse curve."),
        Diode.IDEALITY,
        Diode.SERIES);
  }

  private static List<Field> breakdown() {
    return List.of(
        Field.Number.required("volts", Unit.VOLT, 1, 200, "Breakdown voltage at that current."),
        Field.Number.fallback(
            "amps", Unit.AMP, 1e-9, CurvePoint.MOST_AMPS, 5e-3, "Current of that point."),
        Field.Number.fallback("ohms", Unit.OHM, 0, 1e4, 0, "Resistance behind the breakdown."),
        Field.Number.fallback(
            "spread",
            Unit.VOLT,
            0,
            10,
            DiodeType.SPREAD,
            "Standard deviation of the breakdown voltage."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("a", "k");
  }

  @Override
  public boolean polar() {
    return true;
  }

  @Override
  public void connect(Part part, Network network) {
    Fields given = part.fields().group("breakdown");
    CurvePoint point = FORWARD.forward().or(part.fields().group("forward"));
    double a =
        part.fields().number("ideality", FORWARD.ideality())
            * Constants.thermalVolts(network.celsius());
    network.device(
        new ZenerLaw(
            new Junction(a, part.fields().number("series", FORWARD.series()), point.amps()),
            new Junction(a, given.number("ohms", 0), given.number("amps", 5e-3)),
            Diode.forward(part, point),
            breakdown(part, given)),
        network.pin("a"),
        network.pin("k"));
  }

  private static Parameter breakdown(Part part, Fields given) {
    return new Parameter(
        part.ref() + ".breakdown",
        given.number("volts").orElseThrow(),
        new Spread.Normal(given.number("spread", DiodeType.SPREAD)));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(2, 12);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Power(WATTS));
  }
}
