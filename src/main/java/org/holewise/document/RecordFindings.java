package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.holewise.document.shape.Place;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Reading;

/**
 * What is odd about a record as such: written for another exercise, board or meter, readings that
 * nobody asked for or that cannot be used. What is odd about holes, leads and markings is found
 * when the build is marked.
 */
public final class RecordFindings {
  private RecordFindings() {}

  /** The findings in document order, with pointers from the root of a request. */
  public static List<Finding> of(Exercise exercise, BenchRecord record) {
    List<Finding> findings = new ArrayList<>();
    heading(exercise, record, findings::add);
    for (String id : record.readings().keySet()) {
      if (!asks(exercise, id)) {
        findings.add(
            Finding.of(Place.pointer("/build/readings", id), "unknown-reading", id, ids(exercise)));
      }
    }
    for (int i = 0; i < record.extra().size(); i++) {
      ExtraCheck.finding(exercise, record, record.extra().get(i), "/build/extra/" + i)
          .ifPresent(findings::add);
    }
    return findings;
  }

  /** The record without the extra readings that {@link #of} finds fault with. */
  public static BenchRecord usable(Exercise exercise, BenchRecord record) {
    List<Extra> usable =
        record.extra().stream()
            .filter(extra -> ExtraCheck.finding(exercise, record, extra, "").isEmpty())
            .toList();
    return new BenchRecord(
        record.exercise(), record.meter(), record.build(), record.readings(), usable);
  }

  static boolean asks(Exercise exercise, String id) {
    return exercise.readings().stream().anyMatch(reading -> reading.id().equals(id));
  }

  private static void heading(Exercise exercise, BenchRecord record, Consumer<Finding> say) {
    String slug = record.exercise();
    if (!slug.isEmpty() && !slug.equals(exercise.slug())) {
      say.accept(Finding.of("/build/exercise", "other-exercise", slug, exercise.slug()));
    }
    Optional<String> board = record.build().map(Build::board).map(model -> model.name());
    board
        .filter(name -> !name.equals(exercise.board().name()))
        .map(name -> Finding.of("/build/board", "other-board", name, exercise.board().name()))
        .ifPresent(say);
    if (!record.meter().equals(exercise.meter())) {
      say.accept(Finding.of("/build/meter", "other-meter", record.meter(), exercise.meter()));
    }
  }

  private static String ids(Exercise exercise) {
    return String.join(", ", exercise.readings().stream().map(Reading::id).toList());
  }
}
