package org.holewise.school.handin;

import java.util.List;

/**
 * The entries that were saved, as they are now, and those texts of somebody else that they replaced
 * unseen: the last writer wins, and is told.
 */
public record Saved(List<DraftEntry> entries, List<DraftEntry> replaced) {}
