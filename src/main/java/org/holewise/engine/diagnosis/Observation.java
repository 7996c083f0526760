package org.holewise.engine.diagnosis;

import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Shown;

/**
 * One reading that was taken and understood, an exercise's own or one that was asked for.
 *
 * @param coarser how much further than on its best range its digits may be off (SI)
 * @param asBuilt what the circuit as recorded gives, where it has been judged
 */
public record Observation(
    String id,
    Measure measure,
    Condition condition,
    Shown shown,
    double coarser,
    Optional<Shown> asBuilt) {

  public Observation(String id, Measure measure, Condition condition, Shown shown, double coarser) {
    this(id, measure, condition, shown, coarser, Optional.empty());
  }
}
