package org.holewise.school.roster;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.holewise.school.account.TypedName;
import org.jspecify.annotations.Nullable;

/** A form's one field: what a class or a student is to be called. */
record NewName(
    @NotBlank(message = "{person.name.missing}")
        @Size(max = TypedName.LONGEST, message = "{person.name.long}")
        String name) {

  NewName(@Nullable String name) {
    this.name = TypedName.tidy(name);
  }
}
