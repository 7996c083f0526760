package org.holewise.document.picture;

/**
 * How the board lies in the drawing. The two are one board turned, not mirrored: from one to the
 * other it turns a quarter clockwise.
 */
public enum View {
  /** Columns run along the page, row j on the upper side. */
  ALONG,
  /** Columns run down the page, row a on the left: for a phone held upright. */
  DOWN;

  /**
   * A point of the board in the drawing.
   *
   * @param u along the columns (px)
   * @param v across the rows, from the rail beside row a (px)
   * @param depth of the board across the rows (px)
   */
  Spot spot(double u, double v, double depth) {
    return this == ALONG ? new Spot(u, depth - v) : new Spot(v, u);
  }
}
