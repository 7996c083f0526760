package org.holewise.engine.reading;

import java.util.Optional;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.quantity.Parsed;

/**
 * A reading judged.
 *
 * @param measured what was read; empty where it is missing or unreadable
 * @param unreadable why it could not be read
 * @param wanted what the schematic's circuit gives; empty where that has no solution
 * @param asBuilt what the circuit as built gives; empty where it has no solution
 */
public record Judged(
    Reading reading,
    Optional<Shown> measured,
    Optional<Parsed.Why> unreadable,
    Optional<Expected> wanted,
    Optional<Expected> asBuilt,
    Verdict verdict) {}
