package org.holewise.document.text;

import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;

/** Says which reading to take next, and how to take it without harm. */
final class MeasureTexts {
  private final Messages messages;
  private final Names names;
  private final Exercise exercise;

  MeasureTexts(Messages messages, Names names, Exercise exercise) {
    this.messages = messages;
    this.names = names;
    this.exercise = exercise;
  }

  /** The condition is named only where there is a choice. */
  String of(NextReading next) {
    String measure = asked(next.measure());
    return exercise.conditions().size() > 1
        ? messages.say("next.when", next.when(), measure)
        : measure;
  }

  /** A reading that was asked for in the course of finding a fault. */
  String asked(Measure measure) {
    String key = "asked." + measure.key();
    boolean alone = measure instanceof Measure.Ohms ohms && ohms.alone();
    return messages.has(key) && !alone ? messages.say(key, points(measure)) : of(measure);
  }

  String of(Measure measure) {
    if (measure instanceof Measure.Seen seen) {
      return messages.say("next.seen", seen.ref());
    }
    if (measure instanceof Measure.Ohms m && m.alone() && m.one() instanceof Probe.AtPin at) {
      return messages.say("next.ohms.alone", at.pin().ref());
    }
    return messages.say("next." + measure.key(), points(measure));
  }

  private Object[] points(Measure measure) {
    boolean lead = measure instanceof Measure.Amps;
    return measure.points().stream().map(point -> lead ? lead(point) : point(point)).toArray();
  }

  private String lead(Probe probe) {
    return probe instanceof Probe.AtPin at ? names.lead(at.pin()) : point(probe);
  }

  private String point(Probe probe) {
    return probe instanceof Probe.AtPin at
        ? messages.say("point.pin", names.lead(at.pin()))
        : messages.say("point.hole", probe);
  }
}
