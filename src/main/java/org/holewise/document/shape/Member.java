package org.holewise.document.shape;

import java.util.Optional;

/**
 * A member of an object: its name, shape and meaning. The same object is the key by which the value
 * is taken from {@link Values}.
 *
 * @param fallback what stands for it where it is left out, as the schema says it
 * @param beside name of the member without which it may not be there
 */
public record Member<T>(
    String name,
    Shape<T> shape,
    boolean required,
    Optional<Object> fallback,
    Optional<String> beside,
    String meaning) {

  public static <T> Member<T> required(String name, Shape<T> shape, String meaning) {
    return new Member<>(name, shape, true, Optional.empty(), Optional.empty(), meaning);
  }

  public static <T> Member<T> optional(String name, Shape<T> shape, String meaning) {
    return new Member<>(name, shape, false, Optional.empty(), Optional.empty(), meaning);
  }

  /** Left out, it is as if {@code fallback} were written. */
  public Member<T> otherwise(Object fallbackValue) {
    return new Member<>(name, shape, false, Optional.of(fallbackValue), beside, meaning);
  }

  /** The same, but it may be left out. */
  public Member<T> maybe() {
    return new Member<>(name, shape, false, fallback, beside, meaning);
  }

  /** It means something only where the member {@code other} is there too. */
  public Member<T> beside(String other) {
    return new Member<>(name, shape, required, fallback, Optional.of(other), meaning);
  }
}
