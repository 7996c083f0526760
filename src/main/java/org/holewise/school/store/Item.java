package org.holewise.school.store;

import java.util.Optional;

/**
 * Something that the store keeps in a drawer.
 *
 * @param part which part of exercises it is; empty where it is none, such as link wire
 * @param minimum there should never be fewer in the store
 * @param pack how many one orders at once
 */
record Item(long id, String label, Optional<PartKey> part, String drawer, int minimum, int pack) {}
