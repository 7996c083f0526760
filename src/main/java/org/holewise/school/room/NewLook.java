package org.holewise.school.room;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a teacher notes of a look at a bench; may be empty. */
record NewLook(String seen) {

  NewLook(@Nullable String seen) {
    this.seen = Objects.requireNonNullElse(seen, "").strip();
  }

  boolean tooLong() {
    return seen.length() > NewOverruling.LONGEST;
  }
}
