package org.holewise.engine.diagnosis;

import java.util.List;
import java.util.Optional;

/** Suspects in descending order, the next reading, and acts, cheapest first. */
public record Diagnosis(List<Suspect> suspects, Optional<NextReading> next, List<Act> acts) {}
