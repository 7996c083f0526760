package org.holewise.school.sheet;

import java.util.Arrays;
import java.util.List;

/** A sentence of the page by its key, and what it names. */
public record Said(String key, List<String> parts) {
  public static Said of(String key, Object... parts) {
    return new Said(key, Arrays.stream(parts).map(String::valueOf).toList());
  }

  /** The same for a message with parts. */
  public Object[] named() {
    return parts.toArray();
  }
}
