package org.holewise.school.roster;

import java.time.Instant;
import java.util.Optional;
import org.holewise.school.account.Person;

/** A student of a class, and since when they have their card. */
record Enrolled(Person student, Optional<Instant> card) {}
