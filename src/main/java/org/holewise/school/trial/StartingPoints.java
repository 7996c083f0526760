package org.holewise.school.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Part;
import org.holewise.school.library.LibraryExercise;
import org.springframework.core.io.ClassPathResource;

/**
 * What a person may start from on the page: an empty list, the exercise's checked build, and builds
 * with a slip, where a file {@code slips/<slug>.txt} has some: a line {@code == name: title}, then
 * the build's lines.
 */
public final class StartingPoints {
  public static final String EMPTY = "empty";
  public static final String CHECKED = "checked";

  private StartingPoints() {}

  /** {@code empty} and {@code checked} are their titles. */
  public static List<StartingPoint> of(LibraryExercise entry, String empty, String checked) {
    Exercise exercise = entry.exercise();
    BenchRecord sound = entry.checked();
    var points = new ArrayList<StartingPoint>();
    points.add(new StartingPoint(EMPTY, empty, names(exercise)));
    points.add(new StartingPoint(CHECKED, checked, BuildLines.write(sound, exercise)));
    points.addAll(slips(exercise.slug()));
    return points;
  }

  /** Every name that wants a value, so that only holes and readings have to be typed. */
  private static String names(Exercise exercise) {
    var lines = new ArrayList<String>();
    exercise.parts().stream().map(Part::ref).forEach(lines::add);
    lines.add("link");
    exercise.readings().stream().map(Reading::id).forEach(lines::add);
    return String.join(" \n", lines) + " \n";
  }

  private static List<StartingPoint> slips(String slug) {
    var file = new ClassPathResource("slips/" + slug + ".txt");
    if (!file.exists()) {
      return List.of();
    }
    try {
      var slips = new ArrayList<StartingPoint>();
      for (String section : sections(file.getContentAsString(StandardCharsets.UTF_8))) {
        int colon = section.indexOf(':');
        int end = section.indexOf('\n');
        slips.add(
            new StartingPoint(
                section.substring(0, colon).strip(),
                section.substring(colon + 1, end).strip(),
                section.substring(end + 1)));
      }
      return slips;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static List<String> sections(String text) {
    var sections = new ArrayList<String>();
    for (String section : text.split("(?m)^== ", -1)) {
      if (!section.isBlank()) {
        sections.add(section.strip() + "\n");
      }
    }
    return sections;
  }
}
