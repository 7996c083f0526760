package org.holewise.engine.part;

import java.util.List;
import java.util.Locale;

/**
 * The two silicon diodes that an exercise may leave to its type number. The curves are the
 * project's laws; they lie by the typical values of data sheets (0.62 V at 1 mA and 0.72 V at 10 mA
 * for 1N4148, from memory; at most 1.1 V at 1 A for 1N4001, sheet). Limits are the sheets' of
 * 1N4148 (200 mA, 75 V) and 1N4001 (1 A, 50 V).
 *
 * @param ideality n
 * @param series (Ω)
 * @param amps most that it carries (A)
 * @param reverse most that it blocks (V)
 */
record DiodeType(CurvePoint forward, double ideality, double series, double amps, double reverse) {
  /** Standard deviation of a junction's voltage where none is given (V); the project's law. */
  static final double SPREAD = 0.015;

  static final DiodeType SMALL =
      new DiodeType(new CurvePoint(0.62, 1e-3, SPREAD), 1.6, 0.6, 0.2, 75);
  static final DiodeType RECTIFIER =
      new DiodeType(new CurvePoint(0.7, 10e-3, SPREAD), 1.8, 0.05, 1, 50);

  /** Starts of type numbers of rectifiers; every other type is taken for a small diode. */
  private static final List<String> RECTIFIERS = List.of("1N400", "1N539", "1N540", "RECTIFIER");

  static DiodeType named(String type) {
    String upper = type.strip().toUpperCase(Locale.ROOT);
    return RECTIFIERS.stream().anyMatch(upper::startsWith) ? RECTIFIER : SMALL;
  }
}
