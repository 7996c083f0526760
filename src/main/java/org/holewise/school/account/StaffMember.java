package org.holewise.school.account;

import java.time.Instant;
import java.util.Optional;

/** Somebody who works at the school, and since when their account is taken away, if it is. */
record StaffMember(Person person, Instant made, Optional<Instant> left) {}
