package org.holewise.school.roster;

import java.util.ArrayList;
import java.util.List;
import org.holewise.school.account.TypedName;

/** Names as they were pasted, one a line; lines with nothing on them do not count. */
record PastedNames(List<String> names, List<Problem> problems) {

  static final int MOST = 60;

  /** What is wrong with a line, counted from 1 as it stands in the box. */
  record Problem(String key, int line) {}

  static PastedNames read(String text) {
    var names = new ArrayList<String>();
    var problems = new ArrayList<Problem>();
    int line = 0;
    for (String typed : text.lines().toList()) {
      line++;
      String name = TypedName.tidy(typed);
      if (name.isEmpty()) {
        continue;
      }
      names.add(name);
      if (name.length() > TypedName.LONGEST) {
        problems.add(new Problem("students.line.long", line));
      }
      if (names.size() == MOST + 1) {
        problems.add(new Problem("students.line.many", line));
      }
    }
    if (names.isEmpty()) {
      problems.add(new Problem("students.missing", 1));
    }
    return new PastedNames(List.copyOf(names), List.copyOf(problems));
  }
}
