package org.holewise.engine.part;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.quantity.Parameter;
import org.holewise.engine.quantity.Spread;
import org.holewise.engine.quantity.Unit;

/**
 * A 555 timer, bipolar or CMOS. Three equal resistances divide its supply; its output goes high as
 * trigger falls below half of the control voltage and low as threshold rises above it, trigger
 * first; reset low holds it low; discharge conducts while it is low.
 *
 * <p>Pins and typical values from NE555 (Texas Instruments, SLFS022: divider of 5 kΩ, 3.3 V high at
 * 100 mA and 0.1 V low at 5 mA of 5 V, 3 mA, reset at 0.7 V, 4.5 to 16 V, at most 18 V) and TLC555
 * (SLFS043: 4.8 V high at 1 mA, 0.21 V low at 8 mA, 0.17 mA, 2 to 15 V, at most 18 V).
 */
final class Timer implements Kind {
  private static final Pinout PINS = Pinout.of("GND TRIG OUT RESET CONT THRES DISCH VCC");
  private static final String CMOS = "CMOS";
  private static final double MAXIMUM = 18;
  private static final double SHARE = 0.5;

  /** Drop of a bipolar output that is high (V), at this current (A), behind an ohm. */
  private static final double DROP = 1.3;

  private static final double DROP_AMPS = 1e-3;
  private static final double BEND = 0.06;

  @Override
  public String name() {
    return "555";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Choice(
            "family", List.of("bipolar", CMOS), Optional.of("bipolar"), "How it is made."),
        new Field.Text("type", "Maker's type number."),
        Field.Number.optional("idle", Unit.AMP, 1e-6, 1, "What it draws by itself at 5 V."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return PINS.numbers();
  }

  @Override
  public List<Leg> legs(Fields fields) {
    return PINS.legs("DISCH THRES TRIG CONT RESET", "OUT");
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Dip(PINS.names().size());
  }

  private static boolean cmos(Part part) {
    return part.fields().text("family").orElse("").equals(CMOS);
  }

  @Override
  public void connect(Part part, Network network) {
    boolean cmos = cmos(part);
    int plus = network.pin(PINS.number("VCC"));
    int minus = network.pin(PINS.number("GND"));
    int control = network.pin(PINS.number("CONT"));
    Parameter third = Parameter.within(part.ref() + ".divider", cmos ? 100e3 : 5e3, 0.2);
    int middle = network.node();
    network.resistor(plus, control, third);
    network.resistor(control, middle, third);
    network.resistor(middle, minus, third);
    double idle = part.fields().number("idle", cmos ? 0.15e-3 : 2.7e-3);
    network.resistor(plus, minus, Parameter.within(part.ref() + ".idle", 5 / idle, SHARE));
    network.logic(
        new TimerLogic(cmos),
        plus,
        minus,
        new int[] {
          network.pin(PINS.number("TRIG")),
          network.pin(PINS.number("THRES")),
          network.pin(PINS.number("RESET")),
          control
        },
        new Driver(network.pin(PINS.number("OUT")), high(part), low(part, cmos ? 26 : 20)),
        new Driver(
            network.pin(PINS.number("DISCH")),
            high(part),
            new OutputLaw(Parameter.within(part.ref() + ".discharge", 15, SHARE), 5)));
  }

  private static Device high(Part part) {
    return cmos(part)
        ? new OutputLaw(Parameter.within(part.ref() + ".high", 200, SHARE), 5)
        : new DiodeLaw(
            new Junction(BEND, 1, DROP_AMPS),
            new Parameter(part.ref() + ".high", DROP, new Spread.Normal(0.1)));
  }

  private static Device low(Part part, double ohms) {
    return new OutputLaw(Parameter.within(part.ref() + ".low", ohms, SHARE), 5);
  }

  @Override
  public List<Limit> limits(Part part) {
    double amps = cmos(part) ? 0.1 : 0.2;
    return List.of(
        new Limit.Supply(PINS.number("VCC"), PINS.number("GND"), MAXIMUM),
        new Limit.Current(PINS.number("OUT"), amps, 1.25 * amps));
  }
}
