package org.holewise.school.room;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * The cause that a teacher found, as chosen and typed.
 *
 * @param cause a choice of {@link Causes}
 */
record NewCause(String cause, String place, String note) {

  private static final int LONGEST_PLACE = 200;

  NewCause(@Nullable String cause, @Nullable String place, @Nullable String note) {
    this.cause = Objects.requireNonNullElse(cause, "");
    this.place = Objects.requireNonNullElse(place, "").strip();
    this.note = Objects.requireNonNullElse(note, "").strip();
  }

  Optional<Causes.Choice> chosen(List<Causes.Choice> offered) {
    return offered.stream().filter(choice -> choice.code().equals(cause)).findFirst();
  }

  void check(List<Causes.Choice> offered, Errors found) {
    if (chosen(offered).isEmpty()) {
      found.rejectValue("cause", "cause.missing");
    }
    if (place.length() > LONGEST_PLACE) {
      found.rejectValue("place", "cause.place.long");
    }
    if (note.length() > NewOverruling.LONGEST) {
      found.rejectValue("note", "bench.text.long");
    }
  }
}
