package org.holewise.engine.wiring;

/** One repair, strip by strip; each costs 1. */
sealed interface Fix {

  /** A lead moved to a strip. */
  record Lead(int pin, int strip) implements Fix {}

  /** An end of a link moved to a strip. */
  record End(int link, int end, int strip) implements Fix {}

  /** A link added between two strips. */
  record Add(int from, int to) implements Fix {}

  record Remove(int link) implements Fix {}

  /** A missing part placed, every lead where it belongs. */
  record Place(int part) implements Fix {}
}
