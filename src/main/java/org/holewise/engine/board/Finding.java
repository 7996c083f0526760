package org.holewise.engine.board;

import java.util.List;

/**
 * Something well formed but impossible or odd. A student's slip is data, not an error.
 *
 * @param at JSON pointer into the request, such as {@code /build/placed/3/holes/a}
 * @param kind key of its sentence, such as {@code hole-taken}
 * @param parts what the sentence names, in its order
 */
public record Finding(String at, String kind, List<String> parts) {
  public static Finding of(String at, String kind, Object... parts) {
    return new Finding(at, kind, java.util.Arrays.stream(parts).map(String::valueOf).toList());
  }
}
