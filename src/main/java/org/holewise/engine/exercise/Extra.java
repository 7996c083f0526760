package org.holewise.engine.exercise;

/** A reading taken because it was asked for. */
public record Extra(String id, Measure measure, String when, Written value) {}
