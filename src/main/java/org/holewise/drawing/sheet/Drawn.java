package org.holewise.drawing.sheet;

import java.util.List;

/** What came of drawing: a drawing, or why there is none. */
public sealed interface Drawn {

  /** A clean drawing. */
  record Done(Drawing drawing) implements Drawn {}

  /**
   * No clean drawing was found; hints may help.
   *
   * @param parts refs that it failed on
   * @param nets names of the nets that it failed on
   */
  record Undrawable(Why why, List<String> parts, List<String> nets) implements Drawn {
    public Undrawable {
      parts = List.copyOf(parts);
      nets = List.copyOf(nets);
    }
  }

  /** Why there is no drawing. */
  enum Why {
    /** There is nothing to draw. */
    EMPTY,
    /** Two symbols would stand on each other where hints put them. */
    OVERLAP,
    /** There is no way for a wire. */
    NO_WAY,
    /** There is no room for a text. */
    NO_ROOM,
    /** A law of drawings does not hold. */
    UNCLEAN
  }
}
