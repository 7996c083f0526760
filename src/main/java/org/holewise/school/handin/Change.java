package org.holewise.school.handin;

/**
 * A new text for an entry.
 *
 * @param base the revision that the writer saw before; 0 for none
 */
public record Change(String name, String text, long base) {

  /** As many characters as are kept of an entry. */
  public static final int LONGEST = 1000;

  /** The text on one line, as it is kept; half a character is none. */
  public Change {
    text = text.replaceAll("\\p{Cs}", "\ufffd").replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
