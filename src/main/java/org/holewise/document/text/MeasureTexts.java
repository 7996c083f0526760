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
    String measure = of(next.measure());
    return exercise.conditions().size() > 1
        ? messages.say("next.when", next.when(), measure)
        : measure;
  }

  String of(Measure measure) {
    if (measure instanceof Measure.Volts m) {
      return messages.say("next.volts", point(m.red()), point(m.black()));
    }
    if (measure instanceof Measure.Amps m) {
      return messages.say("next.amps", names.lead(m.pin()));
    }
    if (measure instanceof Measure.Ohms m) {
      return m.alone() && m.one() instanceof Probe.AtPin at
          ? messages.say("next.ohms.alone", at.pin().ref())
          : messages.say("next.ohms", point(m.one()), point(m.other()));
    }
    return measure instanceof Measure.Joined m
        ? messages.say("next.joined", point(m.one()), point(m.other()))
        : messages.say("next.seen", ((Measure.Seen) measure).ref());
  }

  private String point(Probe probe) {
    return probe instanceof Probe.AtPin at
        ? messages.say("point.pin", names.lead(at.pin()))
        : messages.say("point.hole", probe);
  }
}
