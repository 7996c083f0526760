package org.holewise.engine.exercise;

/** What a build may do otherwise than the schematic without it counting as a difference. */
public record Allow(boolean seriesOrder, boolean equalParts, boolean extraLinks) {
  public static final Allow ALL = new Allow(true, true, true);
}
