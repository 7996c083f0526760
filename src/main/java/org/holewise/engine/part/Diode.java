package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/** A silicon diode, by type number or by a point of its forward curve; a small one by default. */
final class Diode implements Kind {
  /** Field of every kind with a junction: n of its exponential. */
  static final Field IDEALITY =
      Field.Number.optional("ideality", Unit.COUNT, 0.5, 10, "Ideality n of the junction.");

  /** Field of every kind with a junction: the resistance behind it. */
  static final Field SERIES =
      Field.Number.optional("series", Unit.OHM, 0, 1e3, "Resistance behind the junction.");

  @Override
  public String name() {
    return "diode";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "Maker's type number; sets what is not given otherwise."),
        CurvePoint.group("forward", 10, "A point of the forward curve."),
        IDEALITY,
        SERIES);
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
    DiodeType type = type(part);
    connect(part, network, type.forward(), type.ideality(), type.series());
  }

  /** Stamps the junction of a diode or LED: the part's fields, the given ones where silent. */
  static void connect(
      Part part, Network network, CurvePoint usual, double ideality, double series) {
    connect(part, network, usual, ideality, series, network.pin("a"), network.pin("k"));
  }

  /** The same between two nodes. */
  static void connect(
      Part part,
      Network network,
      CurvePoint usual,
      double ideality,
      double series,
      int anode,
      int cathode) {
    CurvePoint point = usual.or(part.fields().group("forward"));
    network.device(
        new DiodeLaw(junction(part, network, point, ideality, series), forward(part, point)),
        anode,
        cathode);
  }

  static Junction junction(
      Part part, Network network, CurvePoint point, double ideality, double series) {
    double a =
        part.fields().number("ideality", ideality) * Constants.thermalVolts(network.celsius());
    return new Junction(a, part.fields().number("series", series), point.amps());
  }

  static Parameter forward(Part part, CurvePoint point) {
    return new Parameter(part.ref() + ".forward", point.volts(), new Spread.Normal(point.spread()));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(2, 12);
  }

  @Override
  public List<Limit> limits(Part part) {
    DiodeType type = type(part);
    return List.of(
        new Limit.Current("a", type.amps(), type.amps()),
        new Limit.Reverse("a", "k", type.reverse()));
  }

  private static DiodeType type(Part part) {
    return DiodeType.named(part.fields().text("type").orElse(""));
  }
}
