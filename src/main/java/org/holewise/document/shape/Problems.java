package org.holewise.document.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.Read.Malformed;
import org.holewise.document.shape.Read.Ok;

/**
 * Gathers what is wrong with a document while it is read. Of a document that is wrong all over the
 * first thousand places are kept and the rest counted. Not thread-safe.
 */
public final class Problems {
  static final int MOST = 1_000;

  private final List<Problem> first = new ArrayList<>();
  private int count;

  public void add(Problem problem) {
    if (count < MOST) {
      first.add(problem);
    }
    count++;
  }

  /** How many there are, those not kept included. */
  public int count() {
    return count;
  }

  /** Those kept, and one about the rest. */
  public List<Problem> list() {
    var list = new ArrayList<>(first);
    if (count > MOST) {
      list.add(Problem.of("", "and-more", count - MOST));
    }
    return list;
  }

  /** The value where nothing is wrong. */
  <T> Read<T> outcome(Optional<T> value) {
    return count == 0 ? new Ok<>(value.orElseThrow()) : new Malformed<>(list());
  }
}
