package org.holewise.engine.part;

import java.util.List;

/**
 * A family of logic: what its inputs take for low and high, how strongly its outputs drive, at
 * which supply it works.
 *
 * <p>Sources: MM74HC04 (inputs at 2, 4.5 and 6 V; typical outputs of 4.2 and 0.2 V at 4 mA and 4.5
 * V), SN74HCT00 (0.8 and 2.0 V), DM74LS00 (0.8 and 2.0 V; 3.4 V high, 0.35 V low at 8 mA typical;
 * 0.4 mA out of an input that is low), CD4011B (30 and 70 % of the supply; typically 1 mA at 0.4 V
 * from the rail at 5 V). Schmitt inputs: SN74HC14, 74HCT14, SN74LS14, CD40106B, typical.
 *
 * @param least supply that its sheet works at (V)
 * @param most supply that its sheet works at (V)
 * @param maximum absolute maximum of the supply (V)
 * @param inputs low and high thresholds over the supply
 * @param schmitt the same of its inputs with hysteresis
 * @param high resistance of a high output (Ω), at the supply {@code at} (V)
 * @param low resistance of a low output (Ω), there
 * @param share by how much of it a resistance may differ, as a limit
 * @param drive most current of an output (A)
 * @param bipolar whether inputs draw current and float high
 */
record Family(
    String name,
    double least,
    double most,
    double maximum,
    List<Threshold> inputs,
    List<Threshold> schmitt,
    double high,
    double low,
    double at,
    double share,
    double drive,
    boolean bipolar) {

  /** What counts as low and as high at a supply (V). */
  record Threshold(double supply, double low, double high) {}

  static final Family HC =
      new Family(
          "HC",
          2,
          6,
          7,
          List.of(t(2, 0.5, 1.5), t(4.5, 1.35, 3.15), t(6, 1.8, 4.2)),
          List.of(t(2, 0.6, 1.2), t(4.5, 1.6, 2.5), t(6, 2.0, 3.3)),
          75,
          50,
          4.5,
          0.6,
          0.025,
          false);

  static final Family HCT =
      new Family(
          "HCT",
          4.5,
          5.5,
          7,
          List.of(t(5, 0.8, 2.0)),
          List.of(t(4.5, 0.85, 1.41), t(5.5, 0.99, 1.59)),
          75,
          50,
          4.5,
          0.6,
          0.025,
          false);

  static final Family LS =
      new Family(
          "LS",
          4.75,
          5.25,
          7,
          List.of(t(5, 0.8, 2.0)),
          List.of(t(5, 0.8, 1.6)),
          130,
          44,
          5,
          0.5,
          0.024,
          true);

  static final Family CMOS =
      new Family(
          "CMOS",
          3,
          18,
          20,
          List.of(t(5, 1.5, 3.5), t(10, 3, 7), t(15, 4, 11)),
          List.of(t(5, 1.9, 2.9), t(10, 3.9, 5.9), t(15, 5.8, 8.8)),
          400,
          400,
          5,
          0.6,
          0.01,
          false);

  static final List<Family> ALL = List.of(HC, HCT, LS, CMOS);

  /** Below this nothing in a chip conducts any more (V). */
  private static final double DEAD = 1;

  static Family named(String name) {
    return ALL.stream().filter(family -> family.name.equals(name)).findFirst().orElseThrow();
  }

  private static Threshold t(double supply, double low, double high) {
    return new Threshold(supply, low, high);
  }

  boolean dead(double supply) {
    return supply < DEAD;
  }

  /** A tenth below what the sheet asks for still works on a bench; below that nothing is sure. */
  boolean works(double supply) {
    return supply >= 0.9 * least && supply <= maximum;
  }

  Threshold threshold(double supply) {
    return at(inputs, supply);
  }

  Threshold schmitt(double supply) {
    return at(schmitt, supply);
  }

  /** What a plain input takes a voltage for: between the thresholds it is undefined. */
  Level read(double volts, double supply) {
    Threshold threshold = threshold(supply);
    return volts <= threshold.low
        ? Level.LOW
        : volts >= threshold.high ? Level.HIGH : Level.UNDEFINED;
  }

  /** What an input with hysteresis takes it for: between the thresholds what it was. */
  Level read(double volts, double supply, Level before) {
    Threshold threshold = schmitt(supply);
    return volts <= threshold.low
        ? Level.LOW
        : volts >= threshold.high ? Level.HIGH : before.defined() ? before : Level.UNDEFINED;
  }

  /** Along straight lines between the supplies of the sheet, and on from the outermost. */
  private static Threshold at(List<Threshold> table, double supply) {
    if (table.size() == 1) {
      return table.get(0);
    }
    int i = 1;
    while (i < table.size() - 1 && table.get(i).supply < supply) {
      i++;
    }
    Threshold a = table.get(i - 1);
    Threshold b = table.get(i);
    double share = (supply - a.supply) / (b.supply - a.supply);
    return t(supply, a.low + share * (b.low - a.low), a.high + share * (b.high - a.high));
  }
}
