package org.holewise.route;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Who gets which answer where. A line is a route, an answer for {@link Somebody each} in their
 * order, and after a bar what a change sends along. An answer is a status, or {@code door} for the
 * way to signing in.
 */
record Table(List<Row> rows) {

  record Row(Route route, Map<Somebody, String> answers, String body) {

    String to(Somebody who) {
      return answers.getOrDefault(who, "");
    }
  }

  static Table of(String text) {
    var rows = new ArrayList<Row>();
    for (String line : text.lines().toList()) {
      if (!line.isBlank() && !line.startsWith("#")) {
        rows.add(row(line));
      }
    }
    return new Table(List.copyOf(rows));
  }

  private static Row row(String line) {
    String[] sides = line.split(" \\|", 2);
    String[] words = sides[0].strip().split("\\s+");
    var everybody = Somebody.values();
    if (words.length != 2 + everybody.length) {
      throw new IllegalArgumentException("not an answer for each: " + line);
    }
    var answers = new EnumMap<Somebody, String>(Somebody.class);
    for (int i = 0; i < everybody.length; i++) {
      answers.put(everybody[i], words[i + 2]);
    }
    String body = sides.length == 2 ? sides[1].strip() : "";
    return new Row(new Route(words[0], words[1]), answers, body);
  }
}
