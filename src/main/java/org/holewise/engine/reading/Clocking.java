package org.holewise.engine.reading;

import java.util.List;
import java.util.Set;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Pin;

/**
 * Where the pulses of a clock come from: what drives the clocked pin in the schematic, such as a
 * button or a timer, so that a build in which that does not reach the pin is not clocked; the pin
 * itself where nothing of the kind is on its net.
 */
final class Clocking {
  private static final Set<String> SOURCES =
      Set.of("button", "switch", "changeover", "generator", "555");

  private Clocking() {}

  static Pin source(Assembly assembly, Pin clock) {
    Exercise exercise = assembly.exercise();
    List<Pin> wire =
        exercise.nets().stream()
            .map(Net::pins)
            .filter(pins -> pins.contains(clock))
            .findFirst()
            .orElse(List.of());
    return assembly.really(
        wire.stream()
            .filter(pin -> !pin.ref().equals(clock.ref()) && drives(exercise, pin))
            .findFirst()
            .orElse(clock));
  }

  private static boolean drives(Exercise exercise, Pin pin) {
    return exercise
        .part(pin.ref())
        .filter(part -> SOURCES.contains(part.kind().name()))
        .isPresent();
  }
}
