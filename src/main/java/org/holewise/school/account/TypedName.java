package org.holewise.school.account;

import org.jspecify.annotations.Nullable;

/** A name as somebody typed or pasted it. */
public final class TypedName {

  /** As many as a name's column holds. */
  public static final int LONGEST = 100;

  /** Unseen marks that come along from word processors and change how a line runs. */
  private static final String UNSEEN = "[\\u200B\\u202A-\\u202E\\u2060\\u2066-\\u2069\\uFEFF]";

  private TypedName() {}

  /** The name on one line: no space around it, one between words, nothing unseen. */
  public static String tidy(@Nullable String typed) {
    return typed == null
        ? ""
        : typed.replaceAll(UNSEEN, "").replaceAll("[\\p{Cntrl}\\p{Z}]+", " ").strip();
  }
}
