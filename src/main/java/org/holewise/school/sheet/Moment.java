package org.holewise.school.sheet;

/** A time as people say it, with the exact one beside it. {@code iso} is for programs. */
public record Moment(Said said, String exact, String iso) {}
