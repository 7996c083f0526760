package org.holewise.school.trial;

/** Lines to start from: an empty list, the checked build, or one with a slip in it. */
public record StartingPoint(String name, String title, String lines) {}
