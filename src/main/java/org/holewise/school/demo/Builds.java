package org.holewise.school.demo;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.holewise.engine.exercise.Reading;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.trial.StartingPoints;

/** Builds of an exercise as lines: the checked one, and those with a slip. */
record Builds(LibraryExercise entry) {

  List<String> sound() {
    return named(StartingPoints.CHECKED);
  }

  /** The build with the slip of that name. */
  List<String> named(String name) {
    return StartingPoints.of(entry, "", "").stream()
        .filter(point -> point.name().equals(name))
        .flatMap(point -> point.lines().lines())
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
  }

  /** A build as far as it is built, with nothing measured. */
  List<String> layout(List<String> lines) {
    Set<String> readings =
        entry.exercise().readings().stream().map(Reading::id).collect(Collectors.toSet());
    return lines.stream()
        .filter(line -> !readings.contains(line.substring(0, line.indexOf(' '))))
        .toList();
  }

  /** The layout of the checked build with one link too many. */
  List<String> withLink(String link) {
    return Stream.concat(layout(sound()).stream(), Stream.of(link)).toList();
  }
}
