package org.holewise.engine.wiring;

/**
 * A choice in words and holes.
 *
 * @param fix what it comes to with its first holes
 * @param rank how plausible: 0 a usual slip, 1 something that touches nothing else, 2 and 3 others
 * @param order place in the order of the document
 * @param open whether a free hole remains for it
 */
record Offer(Choice choice, Repair repair, Fix fix, int rank, long order, boolean open)
    implements Comparable<Offer> {

  /** Most plausible first; what no free hole remains for comes last. */
  @Override
  public int compareTo(Offer other) {
    if (open != other.open) {
      return open ? -1 : 1;
    }
    return rank != other.rank
        ? Integer.compare(rank, other.rank)
        : Long.compare(order, other.order);
  }
}
