package org.holewise.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The table of which of our packages may use which; names are below {@code org.holewise}. */
record AllowedUses(Map<String, List<String>> rows) {

  /**
   * Reads one row a line, {@code package : uses uses}. A name that ends in {@code .*} stands for
   * all packages below it; {@code (root)} is {@code org.holewise} itself.
   */
  static AllowedUses of(String table) {
    var rows = new TreeMap<String, List<String>>();
    for (String line : table.lines().toList()) {
      String[] sides = line.split(":", -1);
      var before = rows.put(sides[0].strip(), List.of(sides[1].strip().split("\\s+")));
      if (sides.length != 2 || before != null) {
        throw new IllegalArgumentException("not one row for one package: " + line);
      }
    }
    return new AllowedUses(rows);
  }

  /** Every use that its row does not allow, as {@code package -> package}. */
  List<String> refused(Map<String, ? extends Iterable<String>> uses) {
    var refused = new ArrayList<String>();
    uses.forEach(
        (user, used) -> {
          for (String name : used) {
            if (rows.getOrDefault(user, List.of()).stream().noneMatch(row -> covers(row, name))) {
              refused.add(user + " -> " + name);
            }
          }
        });
    return refused;
  }

  private static boolean covers(String row, String name) {
    return row.endsWith(".*")
        ? name.startsWith(row.substring(0, row.length() - 1))
        : name.equals(row);
  }
}
