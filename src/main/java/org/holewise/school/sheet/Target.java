package org.holewise.school.sheet;

import java.util.List;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Pin;

/**
 * The first thing that a student should look at.
 *
 * @param kind part, link, reading, missing, strips or rail
 * @param name of the part, link or reading; empty for the others
 * @param place of the fault, as acts name it
 * @param around every hole of the part or link
 * @param holes where exactly
 * @param sentence what to do there; {@code others} would do as well
 */
record Target(
    String kind,
    String name,
    Place place,
    List<Hole> around,
    List<Hole> holes,
    String sentence,
    List<String> others) {

  /** Whether to name the points of a reading would tell the place, where only the part is named. */
  boolean toldBy(Measure measure) {
    return !holes.equals(around) && measure.points().stream().anyMatch(this::at);
  }

  private boolean at(Probe point) {
    if (point instanceof Probe.AtHole at) {
      return holes.contains(at.hole());
    }
    Pin pin = ((Probe.AtPin) point).pin();
    return place instanceof Place.OfLead lead && lead.pin().equals(pin);
  }

  /** The key of the sentence that names it and nothing more. */
  String key() {
    return "hint." + kind;
  }
}
