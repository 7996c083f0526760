package org.holewise.engine.exercise;

/** A reading taken because it was asked for. */
public record Extra(String id, Measure measure, Occasion occasion, Written value) {
  public Extra(String id, Measure measure, String when, Written value) {
    this(id, measure, Occasion.in(when), value);
  }

  /** Name of the condition. */
  public String when() {
    return occasion.when();
  }
}
