package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * Two comparators with open collectors in a package of eight pins, as LM393: out, −, + on 1, 2, 3
 * and 7, 6, 5, bottom supply on 4, top supply on 8. Its output pulls as 62 Ω (250 mV at 4 mA) up to
 * 16 mA, gain 200,000, supply at most 36 V (sheet LM393, typical).
 */
final class DualComparator implements Kind {
  private static final double OHMS = 62;
  private static final double AMPS = 16e-3;
  private static final double MOST_SUPPLY = 36;

  /** A gain of 200,000 to a collector of about 10 V, as the slope of a switch (1/V). */
  private static final double GAIN = 4e4;

  @Override
  public String name() {
    return "comparator";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Text("type", "Maker's type number, such as LM393."),
        Field.Number.fallback(
            "offset", Unit.VOLT, -1, 1, 0, "Voltage at its + input that is not there."),
        Field.Number.fallback(
            "spread", Unit.VOLT, 0, 1, 2e-3, "Standard deviation of the offset."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return DualOpAmp.PINS;
  }

  @Override
  public void connect(Part part, Network network) {
    int top = network.pin("8");
    int bottom = network.pin("4");
    var input = Parameter.exact(part.ref() + ".input", DualOpAmp.INPUT);
    network.number(input);
    network.number(offset(part, 0));
    network.number(offset(part, 1));
    for (int half = 0; half < DualOpAmp.HALVES.size(); half++) {
      List<String> pins = DualOpAmp.HALVES.get(half);
      if (network.used(pins)) {
        int plus = network.pin(pins.get(1));
        int minus = network.pin(pins.get(2));
        network.resistor(plus, bottom, input);
        network.resistor(minus, bottom, input);
        network.device(
            new ComparatorLaw(GAIN, OHMS, AMPS, offset(part, half)),
            network.pin(pins.get(0)),
            plus,
            minus,
            top,
            bottom);
      }
    }
  }

  private static Parameter offset(Part part, int half) {
    return new Parameter(
        part.ref() + ".offset" + (half + 1),
        part.number("offset"),
        new Spread.Normal(part.number("spread")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Dip(8);
  }

  @Override
  public List<Limit> limits(Part part) {
    return List.of(new Limit.Supply("8", "4", MOST_SUPPLY));
  }
}
