package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.engine.quantity.Unit;
import org.holewise.engine.reading.Assembly;

/**
 * One thing that may be wrong, as it would be if it were so. A fault that has a size, such as a
 * poor contact, is several of these. Immutable.
 *
 * @param share of its place's prior, relative to the others there
 * @param holes where it probably is
 * @param said what more its kind says: a value, a manner
 * @param assembly what would stand on the bench
 * @param slip what would be wrong with a reading
 * @param vague values that would themselves be uncertain
 */
record Hypothesis(
    Family family,
    Place place,
    String kind,
    double share,
    List<Hole> holes,
    Said said,
    Assembly assembly,
    Optional<Slip> slip,
    List<Vague> vague) {

  /** What the part really is (SI), NaN where that is not the point; and how it is so. */
  record Said(double value, Unit unit, String how) {
    static final Said NOTHING = new Said(Double.NaN, Unit.OHM, "");
  }

  /** Deviation of parameters whose names begin so: a share of their values, and so much (SI). */
  record Vague(String parameter, double share, double si) {}

  /** Nothing wrong: what was entered and measured fits. */
  static Hypothesis sound(Assembly record) {
    return of(Family.NONE, new Place.Nowhere(), "none", 1, List.of(), record);
  }

  static Hypothesis of(
      Family family, Place place, String kind, double share, List<Hole> holes, Assembly really) {
    return new Hypothesis(
        family, place, kind, share, holes, Said.NOTHING, really, Optional.empty(), List.of());
  }

  Hypothesis valued(double si, Unit unit) {
    return with(new Said(si, unit, said.how()), slip, vague);
  }

  Hypothesis how(String how) {
    return with(new Said(said.value(), said.unit(), how), slip, vague);
  }

  Hypothesis vague(String parameter, double share, double si) {
    return with(said, slip, List.of(new Vague(parameter, share, si)));
  }

  Hypothesis slipped(Slip how) {
    return with(said, Optional.of(how), vague);
  }

  /** The same together with another; the place and what is said stay. Empty where they clash. */
  Optional<Hypothesis> and(Hypothesis other, Assembly record) {
    var both = new ArrayList<>(vague);
    both.addAll(other.vague);
    return place.equals(other.place)
        ? Optional.empty()
        : assembly
            .and(other.assembly, record)
            .map(
                together ->
                    new Hypothesis(family, place, kind, share, holes, said, together, slip, both));
  }

  private Hypothesis with(Said more, Optional<Slip> slipped, List<Vague> uncertain) {
    return new Hypothesis(family, place, kind, share, holes, more, assembly, slipped, uncertain);
  }
}
