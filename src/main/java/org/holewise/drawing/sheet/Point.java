package org.holewise.drawing.sheet;

/** A point of the drawing's grid (px), from its upper left corner. */
public record Point(int x, int y) {

  public Point plus(int dx, int dy) {
    return new Point(x + dx, y + dy);
  }
}
