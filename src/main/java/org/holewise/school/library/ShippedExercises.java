package org.holewise.school.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.holewise.document.BuildDocument;
import org.holewise.document.ExerciseDocument;
import org.holewise.document.shape.Read;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * The exercises that come along: each a file {@code exercises/<slug>.yaml} and beside it a checked
 * build. Read once at the start, which fails where one of them is malformed.
 */
@Component
class ShippedExercises implements Library {
  private static final String FILES = "classpath*:exercises/*.yaml";

  private final List<LibraryExercise> exercises;

  ShippedExercises() throws IOException {
    this(new PathMatchingResourcePatternResolver().getResources(FILES));
  }

  ShippedExercises(Resource... files) {
    exercises =
        Arrays.stream(files)
            .map(ShippedExercises::read)
            .sorted(Comparator.comparing(entry -> entry.exercise().slug()))
            .toList();
  }

  @Override
  public List<LibraryExercise> exercises() {
    return exercises;
  }

  private static LibraryExercise read(Resource file) {
    String name = String.valueOf(file.getFilename());
    try {
      String text = file.getContentAsString(StandardCharsets.UTF_8);
      var prepared = sound(name, ExerciseDocument.yaml(text));
      var exercise = prepared.exercise();
      if (!name.equals(exercise.slug() + ".yaml")) {
        throw new IllegalStateException(name + " has the slug " + exercise.slug());
      }
      var build = file.createRelative(exercise.slug() + "-build.json");
      var checked = sound(name, BuildDocument.json(build.getContentAsByteArray(), exercise));
      return new LibraryExercise(exercise, prepared.notes(), text, checked);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the build beside " + name, e);
    }
  }

  private static <T> T sound(String name, Read<T> read) {
    if (read instanceof Read.Ok<T> ok) {
      return ok.value();
    }
    var problems =
        read.problems().stream().map(problem -> problem.at() + ": " + problem.text()).toList();
    throw new IllegalStateException(name + " is malformed: " + String.join("; ", problems));
  }
}
