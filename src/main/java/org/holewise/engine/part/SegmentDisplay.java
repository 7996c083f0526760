package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A seven-segment display of one digit in its usual package of ten pins, rows 15.24 mm apart: eight
 * lamps with one side in common. Pins as common sheets of 14 mm digits have them: e d com c dp, b a
 * com f g. Each segment is an LED with the laws of that kind.
 */
final class SegmentDisplay implements Kind {
  private static final Pinout PINS = Pinout.of("e d COM c dp b a COM2 f g");
  private static final List<String> SEGMENTS = List.of("a", "b", "c", "d", "e", "f", "g", "dp");
  private static final List<List<String>> TWINS = List.of(List.of("3", "8"));
  private static final int WIDE = 6;
  private static final String ANODE = "anode";

  @Override
  public String name() {
    return "seven-segment";
  }

  @Override
  public List<Field> fields() {
    var fields = new ArrayList<Field>();
    fields.add(
        new Field.Choice(
            "common", List.of("cathode", ANODE), Optional.of("cathode"), "What its lamps share."));
    fields.addAll(new Led().fields());
    return List.copyOf(fields);
  }

  @Override
  public List<String> pins(Fields fields) {
    return PINS.numbers();
  }

  @Override
  public List<List<String>> twins(Fields fields) {
    return TWINS;
  }

  @Override
  public void connect(Part part, Network network) {
    int common = network.pin(PINS.number("COM"));
    network.join(common, network.pin(PINS.number("COM2")));
    for (String segment : SEGMENTS) {
      int own = network.pin(PINS.number(segment));
      Led.connect(part, network, anode(part) ? common : own, anode(part) ? own : common);
    }
  }

  @Override
  public List<Leg> legs(Fields fields) {
    Leg.Role common = anode(fields) ? Leg.Role.PLUS : Leg.Role.MINUS;
    return PINS.legs(String.join(" ", SEGMENTS), "").stream()
        .map(leg -> leg.role() == Leg.Role.PLAIN ? new Leg(leg.pin(), "COM", common) : leg)
        .toList();
  }

  private static boolean anode(Part part) {
    return anode(part.fields());
  }

  private static boolean anode(Fields fields) {
    return fields.text("common").orElse("").equals(ANODE);
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Dip(PINS.names().size(), WIDE);
  }

  @Override
  public List<Limit> limits(Part part) {
    double limit = part.fields().number("limit", Led.AMPS);
    return SEGMENTS.stream()
        .<Limit>map(segment -> new Limit.Current(PINS.number(segment), limit, Led.MAXIMUM * limit))
        .toList();
  }
}
