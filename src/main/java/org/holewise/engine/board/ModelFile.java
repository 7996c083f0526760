package org.holewise.engine.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A board model as its data file says it; see {@link BoardModels#read}. */
record ModelFile(Map<String, String> lines) {
  private static final int MOST_COLUMNS = 999;

  static ModelFile of(String name, String text) {
    var lines = new LinkedHashMap<String, String>();
    for (String line : text.lines().map(String::strip).toList()) {
      if (!line.isEmpty() && !line.startsWith("#")) {
        int equals = line.indexOf('=');
        require(equals > 0, name, line);
        lines.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
      }
    }
    return new ModelFile(lines);
  }

  BoardModel model(String name) {
    int columns = number(name, lines.getOrDefault("columns", ""));
    var printed = words(lines.getOrDefault("printed", "a b c d e f g h i j"));
    require(columns >= 1 && columns <= MOST_COLUMNS, name, "columns");
    require(printed.size() == 10, name, "printed");
    var rails = new ArrayList<Rail>();
    for (String track : words(lines.getOrDefault("rails", ""))) {
      require(track.matches("[+-][aj]"), name, track);
      require(rails.stream().noneMatch(rail -> rail.track().equals(track)), name, track);
      rails.add(rail(name, track, columns));
    }
    return new BoardModel(name, columns, rails, printed);
  }

  private Rail rail(String name, String track, int columns) {
    var rail =
        new Rail(
            track,
            columns(name, "rail." + track + ".columns", "rail.columns"),
            columns(name, "rail." + track + ".gaps", "rail.gaps"));
    require(!rail.columns().isEmpty(), name, track);
    require(Stream.of(rail.columns(), rail.gaps()).allMatch(ModelFile::ascending), name, track);
    require(
        Stream.of(rail.columns(), rail.gaps())
            .flatMap(List::stream)
            .allMatch(column -> column >= 1 && column <= columns),
        name,
        track);
    require(rail.columns().stream().noneMatch(rail.gaps()::contains), name, track);
    return rail;
  }

  private List<Integer> columns(String name, String key, String shared) {
    var all = new ArrayList<Integer>();
    for (String range : words(lines.getOrDefault(key, lines.getOrDefault(shared, "")))) {
      int dash = range.indexOf('-');
      int first = number(name, dash < 0 ? range : range.substring(0, dash));
      int last = dash < 0 ? first : number(name, range.substring(dash + 1));
      IntStream.rangeClosed(first, last).forEach(all::add);
    }
    return all;
  }

  private static boolean ascending(List<Integer> numbers) {
    return IntStream.range(1, numbers.size()).allMatch(i -> numbers.get(i - 1) < numbers.get(i));
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }

  private static int number(String name, String digits) {
    require(digits.matches("[0-9]{1,3}"), name, digits);
    return Integer.parseInt(digits);
  }

  private static void require(boolean holds, String name, String what) {
    if (!holds) {
      throw new IllegalArgumentException("board model " + name + ": " + what);
    }
  }
}
