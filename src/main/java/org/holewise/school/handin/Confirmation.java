package org.holewise.school.handin;

import java.time.Instant;
import org.holewise.school.account.Person;

/**
 * What was found at the bench to be the cause.
 *
 * @param kind a kind of suspect, such as {@code open-contact}
 * @param place where, such as {@code R1.2}; may be empty
 */
public record Confirmation(String kind, String place, String note, Person by, Instant at) {}
