package org.holewise.school.handin;

import java.time.Instant;
import org.holewise.school.account.Person;

/**
 * One entry of a bench's draft, as typed.
 *
 * @param text what follows the name on a typed line; empty where the entry was taken out
 * @param revision counts the texts that this entry had, from 1
 */
public record DraftEntry(String name, String text, long revision, Person by, Instant at) {}
