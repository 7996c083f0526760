package org.holewise.engine.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All kinds of parts. A new kind is one file and one line here. */
public final class Registry {
  private static final List<Kind> PARTS =
      List.of(
          new Resistor(),
          new Potentiometer(),
          VaryingResistor.PHOTORESISTOR,
          VaryingResistor.THERMISTOR,
          Capacitor.PLAIN,
          Capacitor.ELECTROLYTIC,
          new Inductor(),
          new Diode(),
          new Zener(),
          new Led(),
          Bipolar.NPN,
          Bipolar.PNP,
          Mosfet.NMOS,
          Mosfet.PMOS,
          new DualOpAmp(),
          new DualComparator(),
          new Regulator(),
          new Switch(),
          new Button(),
          new Changeover(),
          new Battery(),
          new Supply(),
          new Generator());

  /** Chips, by number. */
  private static final List<List<? extends Kind>> CHIPS =
      List.of(
          GateChip.ALL,
          List.of(FlipFlops.KIND),
          List.of(RippleCounter.KIND),
          BinaryCounter.ALL,
          List.of(DecadeCounter.KIND),
          ShiftRegisters.ALL,
          List.of(SegmentDecoder.KIND),
          List.of(new SegmentDisplay()),
          List.of(new Timer()));

  private static final List<Kind> KINDS =
      Stream.concat(PARTS.stream(), CHIPS.stream().flatMap(List::stream)).toList();

  private Registry() {}

  public static List<Kind> kinds() {
    return KINDS;
  }

  public static Optional<Kind> kind(String name) {
    return KINDS.stream().filter(kind -> kind.name().equals(name)).findFirst();
  }
}
