package org.holewise.engine.solver;

import java.util.List;

/**
 * A circuit that a source in print works out, and what it says of it.
 *
 * @param source where, and whether it is quoted from memory or calculated
 * @param circuit as {@link Rows} reads it
 * @param expected as {@link Expected} reads it
 */
record Example(String source, String circuit, List<String> expected) {

  static Example of(String source, String circuit, String... expected) {
    return new Example(source, circuit, List.of(expected));
  }

  void check() {
    Rows rows = Rows.of(circuit);
    OperatingPoint point = Rows.solved(rows.circuit());
    expected.forEach(text -> Expected.read(text).check(rows, point));
  }

  @Override
  public String toString() {
    return source;
  }
}
