package org.holewise.drawing.place;

/** The heights that are looked for: the two rails', each net's, each piece's. */
final class Scale {
  static final int TOP = 0;
  static final int BOTTOM = 1;
  private static final int RAILS = 2;

  final Levels levels;
  final Rails rails;
  private final int nets;

  Scale(int nets, int pieces, Rails rails) {
    this.levels = new Levels(RAILS + nets + pieces);
    this.nets = nets;
    this.rails = rails;
  }

  /** The variable of a net's height. */
  int of(int net) {
    return RAILS + net;
  }

  /** The variable of the height of a piece's middle. */
  int of(Piece piece) {
    return RAILS + nets + piece.id;
  }

  boolean signal(int net) {
    return net != Nets.NONE && rails.way(net) == 0;
  }
}
