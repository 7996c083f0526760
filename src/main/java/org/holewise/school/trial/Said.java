package org.holewise.school.trial;

import java.util.Arrays;
import java.util.List;

/** A sentence of the page by its key, and what it names. */
record Said(String key, List<String> parts) {
  static Said of(String key, Object... parts) {
    return new Said("trial." + key, Arrays.stream(parts).map(String::valueOf).toList());
  }

  /** The same for a message with parts. */
  public Object[] named() {
    return parts.toArray();
  }
}
