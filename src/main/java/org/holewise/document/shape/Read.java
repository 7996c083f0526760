package org.holewise.document.shape;

import java.util.List;
import java.util.function.Function;

/** What became of a document: a value, or every place in it that is wrong. */
public sealed interface Read<T> {

  record Ok<T>(T value) implements Read<T> {}

  /** At least one problem, in the order in which they were met. */
  record Malformed<T>(List<Problem> problems) implements Read<T> {
    public Malformed {
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("malformed without a problem");
      }
      problems = List.copyOf(problems);
    }
  }

  /** The problems, none where it was read. */
  default List<Problem> problems() {
    return this instanceof Malformed<T> malformed ? malformed.problems() : List.of();
  }

  default <U> Read<U> map(Function<? super T, ? extends U> function) {
    return this instanceof Ok<T> ok
        ? new Ok<>(function.apply(ok.value()))
        : new Malformed<>(problems());
  }

  /**
   * The value.
   *
   * @throws IllegalStateException with the problems where there is none
   */
  default T orThrow() {
    if (this instanceof Ok<T> ok) {
      return ok.value();
    }
    throw new IllegalStateException("malformed: " + problems());
  }
}
