package org.holewise.engine.diagnosis;

import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.quantity.Unit;

/**
 * One place where the fault may be.
 *
 * @param place where, as the kinds of fault say it
 * @param kinds what may be wrong there, likeliest first, at least one
 * @param probability of the place
 * @param alike positions in the list of suspects of those that these readings cannot tell apart
 * @param evidence what the readings say of the likeliest kind there
 */
public record Suspect(
    Place place, List<Guess> kinds, double probability, List<Integer> alike, Evidence evidence) {

  public Suspect(Place place, List<Guess> kinds, double probability, List<Integer> alike) {
    this(place, kinds, probability, alike, Evidence.NONE);
  }

  /**
   * One kind of fault at a place.
   *
   * @param kind as in the table of suspect kinds, such as {@code open-contact}
   * @param holes where it probably is, or the strips or sides concerned
   * @param value what the part really is, for {@code wrong-value} (SI); else NaN
   * @param unit of the value
   * @param how {@code open} or {@code short} for {@code dead-part}, the pins' real order for {@code
   *     swapped-pins}; else empty
   */
  public record Guess(
      String kind, List<Hole> holes, double value, Unit unit, String how, double probability) {

    public Guess(String kind, List<Hole> holes, double value, String how, double probability) {
      this(kind, holes, value, Unit.OHM, how, probability);
    }
  }

  public Guess likeliest() {
    return kinds.get(0);
  }
}
