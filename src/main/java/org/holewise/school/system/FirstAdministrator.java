package org.holewise.school.system;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** What the set-up form holds. */
record FirstAdministrator(
    @NotBlank(message = "{setUp.code.missing}") @Size(max = 200, message = "{setUp.code.wrong}")
        String code,
    @NotBlank(message = "{person.name.missing}") @Size(max = 100, message = "{person.name.long}")
        String name,
    @NotNull(message = "{password.short}") String password) {}
