package org.holewise.document.shape;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import tools.jackson.databind.node.ObjectNode;

/**
 * A text of limited length that matches a pattern and is then read as something.
 *
 * @param most code points
 * @param pattern found in the text; in the dialect common to Java and ECMA 262
 * @param reader empty where the text is none after all
 * @param otherwise kind of the problem where it does not match; its part is the text
 */
public record TextShape<T>(
    int most, Pattern pattern, Function<String, Optional<T>> reader, String otherwise)
    implements Shape<T> {
  private static final Pattern LINE =
      Pattern.compile("^[^\\x00-\\x1f\\x7f]*[^\\x00-\\x20\\x7f][^\\x00-\\x1f\\x7f]*$");
  private static final Pattern ANYTHING = Pattern.compile("^");
  private static final Pattern PROSE = Pattern.compile("[^\\x00-\\x20\\x7f]");

  /** One line with at least one visible character. */
  public static TextShape<String> line(int most) {
    return new TextShape<>(most, LINE, Optional::of, "not-a-line");
  }

  /** Several lines with at least one visible character. */
  public static TextShape<String> prose(int most) {
    return new TextShape<>(most, PROSE, Optional::of, "blank");
  }

  /** Several lines, or nothing yet. */
  public static TextShape<String> text(int most) {
    return new TextShape<>(most, ANYTHING, Optional::of, "not-text");
  }

  /** A word of the given pattern, as it stands. */
  public static TextShape<String> word(int most, String pattern, String otherwise) {
    return new TextShape<>(most, Pattern.compile(pattern), Optional::of, otherwise);
  }

  @Override
  public Optional<T> read(Place place) {
    if (!place.node().isString()) {
      return place.wrong("not-text");
    }
    String text = place.node().stringValue();
    if (text.codePointCount(0, text.length()) > most) {
      return place.wrong("too-long", most);
    }
    if (!pattern.matcher(text).find()) {
      return place.wrong(otherwise, Excerpt.of(text));
    }
    Optional<T> read = reader.apply(text);
    return read.isPresent() ? read : place.wrong(otherwise, Excerpt.of(text));
  }

  @Override
  public ObjectNode schema() {
    return Schemas.ofType("string").put("maxLength", most).put("pattern", pattern.pattern());
  }
}
