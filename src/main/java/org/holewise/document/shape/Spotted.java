package org.holewise.document.shape;

/** A value and the JSON pointer to where it stood. */
public record Spotted<T>(String at, T value) {}
