package org.holewise.engine.part;

import java.util.List;
import java.util.Optional;

/** All kinds of parts. A new kind is one file and one line here. */
public final class Registry {
  private static final List<Kind> KINDS =
      List.of(
          new Resistor(),
          new Potentiometer(),
          new Diode(),
          new Zener(),
          new Led(),
          Bipolar.NPN,
          Bipolar.PNP,
          new Switch(),
          new Button(),
          new Battery(),
          new Supply());

  private Registry() {}

  public static List<Kind> kinds() {
    return KINDS;
  }

  public static Optional<Kind> kind(String name) {
    return KINDS.stream().filter(kind -> kind.name().equals(name)).findFirst();
  }
}
