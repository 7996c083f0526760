package org.holewise.engine.reading;

import java.util.List;
import java.util.Set;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * Where the pulses of a clock come from: what drives the clocked pin in the schematic, such as a
 * button or a timer, so that a build in which that does not reach the pin is not clocked; the pin
 * itself where nothing of the kind is on its net.
 */
public final class Clocking {
  /** The field of a contact that says how many pulses it gave too many. */
  public static final String BOUNCES = "bounces";

  private static final Set<String> CONTACTS = Set.of("button", "switch", "changeover");

  private static final Set<String> SOURCES =
      Set.of("button", "switch", "changeover", "generator", "555");

  private Clocking() {}

  static Pin source(Assembly assembly, Pin clock) {
    return assembly.really(source(assembly.exercise(), clock));
  }

  private static Pin source(Exercise exercise, Pin clock) {
    List<Pin> wire =
        exercise.nets().stream()
            .map(Net::pins)
            .filter(pins -> pins.contains(clock))
            .findFirst()
            .orElse(List.of());
    return wire.stream()
        .filter(pin -> !pin.ref().equals(clock.ref()) && drives(exercise, pin))
        .findFirst()
        .orElse(clock);
  }

  /** Whether a part is a contact that clocks something in any condition. */
  public static boolean bounces(Exercise exercise, Part part) {
    return CONTACTS.contains(part.kind().name())
        && exercise.conditions().stream()
            .flatMap(condition -> condition.clock().stream())
            .anyMatch(clock -> source(exercise, clock).ref().equals(part.ref()));
  }

  /** How many pulses come of so many pushes. */
  static int pulses(Assembly assembly, Pin source, int pushes) {
    return pushes
        + assembly.changes().stream()
            .filter(change -> change.ref().equals(source.ref()) && change.field().equals(BOUNCES))
            .map(change -> change.value() instanceof Double extra ? extra.intValue() : 0)
            .findFirst()
            .orElse(0);
  }

  private static boolean drives(Exercise exercise, Pin pin) {
    return exercise
        .part(pin.ref())
        .filter(part -> SOURCES.contains(part.kind().name()))
        .isPresent();
  }
}
