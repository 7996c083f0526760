package org.holewise.school.handin;

import java.time.Instant;
import org.holewise.school.account.Person;

/** A teacher was at the bench and looked at the build. */
public record Look(Person by, String note, Instant at) {}
