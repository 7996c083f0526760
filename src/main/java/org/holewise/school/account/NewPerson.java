package org.holewise.school.account;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** What the form for a further person holds; the password is looked at by {@link Passwords}. */
record NewPerson(
    @NotBlank(message = "{person.name.missing}") @Size(max = 100, message = "{person.name.long}")
        String name,
    @NotNull(message = "{person.role.missing}") Role role,
    @NotNull(message = "{password.short}") String password) {

  static NewPerson blank() {
    return new NewPerson("", Role.TEACHER, "");
  }
}
