package org.holewise.document.shape;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was read of an object: its members that could be read, in the order written. Immutable.
 *
 * @param at JSON pointer to the object
 */
public record Values(String at, Map<String, Object> values) {
  public Values {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The member's value; empty where it was left out or could not be read. */
  @SuppressWarnings("unchecked") // A member's value was read by the member's own shape.
  public <T> Optional<T> get(Member<T> member) {
    return Optional.ofNullable((T) values.get(member.name()));
  }

  public <T> T get(Member<T> member, T fallback) {
    return get(member).orElse(fallback);
  }

  /** The value of a required member of an object without problems. */
  public <T> T must(Member<T> member) {
    return get(member).orElseThrow(() -> new IllegalStateException(at + " has no " + member));
  }

  public String at(Member<?> member) {
    return Place.pointer(at, member.name());
  }
}
