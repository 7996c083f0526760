package org.holewise.engine.diagnosis;

import org.holewise.engine.exercise.Measure;

/** The reading to ask for; gain is the expected fall of entropy over places (bit). */
public record NextReading(Measure measure, String when, double gain) {}
