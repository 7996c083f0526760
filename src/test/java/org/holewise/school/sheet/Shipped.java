package org.holewise.school.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.holewise.document.BuildDocument;
import org.holewise.document.ExerciseDocument;
import org.holewise.document.MarkDocument;
import org.holewise.document.MarkRequest;
import org.holewise.document.RecordFindings;
import org.holewise.document.text.Messages;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Marking;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.trial.StartingPoint;
import org.holewise.school.trial.StartingPoints;
import org.springframework.core.io.ClassPathResource;

/** The exercises that come along, and marks of lines typed for them. */
public final class Shipped {
  public static final List<String> SLUGS =
      List.of(
          "stage-bridge",
          "stage-chase",
          "stage-cue",
          "stage-curtain",
          "stage-dimmer",
          "stage-hiss",
          "stage-intercom",
          "stage-moonlight",
          "stage-pulse",
          "stage-reference",
          "stage-twilight",
          "stage-voices");

  private static final Map<String, LibraryExercise> ENTRIES = new ConcurrentHashMap<>();
  private static final Map<String, List<StartingPoint>> STARTS = new ConcurrentHashMap<>();
  private static final Map<List<String>, Mark> MARKS = new ConcurrentHashMap<>();

  private Shipped() {}

  public static LibraryExercise entry(String slug) {
    return ENTRIES.computeIfAbsent(slug, Shipped::read);
  }

  private static LibraryExercise read(String slug) {
    String text = file(slug + ".yaml");
    var prepared = ExerciseDocument.yaml(text).orThrow();
    byte[] build = file(slug + "-build.json").getBytes(StandardCharsets.UTF_8);
    BenchRecord checked = BuildDocument.json(build, prepared.exercise()).orThrow();
    return new LibraryExercise(prepared.exercise(), prepared.notes(), text, checked);
  }

  public static Exercise exercise(String slug) {
    return entry(slug).exercise();
  }

  public static List<StartingPoint> starts(String slug) {
    return STARTS.computeIfAbsent(slug, s -> StartingPoints.of(entry(s), "empty", "checked"));
  }

  /** The lines of a starting point. */
  public static String lines(String slug, String start) {
    return starts(slug).stream()
        .filter(point -> point.name().equals(start))
        .map(StartingPoint::lines)
        .findFirst()
        .orElseThrow();
  }

  public static BenchRecord record(String slug, String lines) {
    return TypedBuild.read(lines, exercise(slug)).record().orElseThrow();
  }

  /** Marked once: marks are values. */
  public static Mark mark(String slug, String lines) {
    return MARKS.computeIfAbsent(List.of(slug, lines), key -> marked(slug, lines));
  }

  private static Mark marked(String slug, String lines) {
    return Marking.mark(exercise(slug), record(slug, lines), Priors.start(), Set.of());
  }

  /** The document of a mark, as it is kept. */
  public static String document(String slug, String lines, Mark mark) {
    BenchRecord record = record(slug, lines);
    var findings = RecordFindings.of(exercise(slug), record);
    var request = new MarkRequest(exercise(slug), record, findings, Set.of());
    return new String(
        MarkDocument.bytes(MarkDocument.tree(request, mark, Messages.english())),
        StandardCharsets.UTF_8);
  }

  public static KeptMark kept(String slug, String lines) {
    return KeptMark.read(document(slug, lines, mark(slug, lines)));
  }

  public static MarkSheet sheet(String slug, String lines) {
    return MarkSheet.of(exercise(slug), record(slug, lines), kept(slug, lines));
  }

  public static String file(String name) {
    try {
      return new ClassPathResource("exercises/" + name).getContentAsString(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
