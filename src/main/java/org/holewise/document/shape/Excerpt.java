package org.holewise.document.shape;

/** The beginning of what somebody wrote, for a sentence about it. */
final class Excerpt {
  private static final int MOST = 40;

  private Excerpt() {}

  static String of(String text) {
    if (text.codePointCount(0, text.length()) <= MOST) {
      return text;
    }
    return text.substring(0, text.offsetByCodePoints(0, MOST)) + "…";
  }
}
