package org.holewise.engine.part;

import java.util.Optional;

/** One lead of one part, written {@code R1.2}; the place where a meter touches its bare metal. */
public record Pin(String ref, String name) implements Comparable<Pin> {

  /** Reads {@code ref.name}; empty where there is no dot with text on both sides. */
  public static Optional<Pin> read(String text) {
    int dot = text.indexOf('.');
    return dot > 0 && dot < text.length() - 1
        ? Optional.of(new Pin(text.substring(0, dot), text.substring(dot + 1)))
        : Optional.empty();
  }

  @Override
  public int compareTo(Pin other) {
    int byRef = ref.compareTo(other.ref);
    return byRef != 0 ? byRef : name.compareTo(other.name);
  }

  @Override
  public String toString() {
    return ref + "." + name;
  }
}
