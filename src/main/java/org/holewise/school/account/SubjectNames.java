package org.holewise.school.account;

import java.util.Map;
import java.util.Set;

/** What things of one kind are called now, for who reads what was done to them. */
public interface SubjectNames {

  /** The kind, as acts are noted with it. */
  String subject();

  /** The present names of those that are still there, by their ids; asked for some at least. */
  Map<Long, String> of(Set<Long> ids);
}
