package org.holewise.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.holewise.document.shape.AnyShape;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.DocumentTree;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Read;
import org.holewise.document.shape.Read.Malformed;
import org.holewise.document.shape.Read.Ok;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Reads requests to mark one build or a batch. Pointers begin at the root of the request; in a
 * batch each element is a request of its own.
 */
public final class RequestDocument {
  public static final int MOST_IN_BATCH = 200;

  private static final Member<Place> EXERCISE =
      Member.required(
          "exercise",
          new AnyShape(
              node -> node.isObject() || node.isString(),
              "not-an-exercise",
              JsonNodeFactory.instance.objectNode()),
          "The exercise, or the slug of one in the library.");
  private static final Member<Place> BUILD =
      Member.required("build", AnyShape.object(), "The build.");
  private static final Member<List<Spotted<String>>> ASK =
      Member.optional(
          "ask",
          new ListShape<>(new ChoiceShape(Measure.KEYS), 0, 20, false),
          "Kinds of readings that next may ask for; any where left out.");
  private static final RecordShape REQUEST = RecordShape.of(List.of(EXERCISE, BUILD, ASK));

  private final Function<String, Optional<Exercise>> library;

  /** Exercises named by their slug are looked up in {@code library}. */
  public RequestDocument(Function<String, Optional<Exercise>> library) {
    this.library = library;
  }

  /** A request to mark one build. */
  public Read<MarkRequest> read(byte[] document) {
    return read(DocumentTree.json(document));
  }

  /** A request to mark several; malformed as a whole where it is no list, or too long a one. */
  public Read<List<Read<MarkRequest>>> readBatch(byte[] document) {
    var tree = DocumentTree.json(document);
    if (!tree.readable()) {
      return new Malformed<>(tree.problems());
    }
    int size = tree.root().size();
    if (!tree.root().isArray() || size > MOST_IN_BATCH) {
      String kind = tree.root().isArray() ? "too-many" : "not-list";
      return new Malformed<>(List.of(Problem.of("", kind, MOST_IN_BATCH)));
    }
    List<Read<MarkRequest>> each = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      each.add(read(tree.element(i)));
    }
    return new Ok<>(each);
  }

  private Read<MarkRequest> read(DocumentTree tree) {
    return tree.read(place -> REQUEST.read(place).flatMap(this::request));
  }

  private Optional<MarkRequest> request(Values values) {
    var exercise = values.get(EXERCISE).flatMap(this::exercise);
    if (exercise.isEmpty()) {
      values.get(BUILD).ifPresent(BuildReader::check);
      return Optional.empty();
    }
    return values
        .get(BUILD)
        .flatMap(build -> BuildReader.read(build, exercise.get()))
        .map(record -> request(exercise.get(), record, ask(values)));
  }

  private static MarkRequest request(Exercise exercise, BenchRecord record, Set<String> ask) {
    return new MarkRequest(
        exercise,
        RecordFindings.usable(exercise, record),
        RecordFindings.of(exercise, record),
        ask);
  }

  private Optional<Exercise> exercise(Place place) {
    if (place.node().isObject()) {
      return ExerciseReader.read(place).map(PreparedExercise::exercise);
    }
    String slug = place.node().stringValue();
    Optional<Exercise> found = library.apply(slug);
    return found.isPresent() ? found : place.wrong("unknown-exercise", slug);
  }

  private static Set<String> ask(Values values) {
    Set<String> kinds = new LinkedHashSet<>();
    values.get(ASK, List.of()).forEach(kind -> kinds.add(kind.value()));
    return kinds;
  }
}
