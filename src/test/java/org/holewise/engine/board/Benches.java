package org.holewise.engine.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Builds written as lines: {@code R1 1=f8 2=f12} places a part, {@code link f14 e14} lays a link.
 */
public final class Benches {
  private Benches() {}

  public static Build build(String model, String... lines) {
    var placed = new ArrayList<Placed>();
    var links = new ArrayList<Link>();
    for (String line : lines) {
      String[] words = line.split(" ");
      if (words[0].equals("link")) {
        links.add(new Link(hole(words[1]), hole(words[2])));
      } else {
        placed.add(placed(words));
      }
    }
    return new Build(BoardModels.named(model).orElseThrow(), placed, links);
  }

  public static Hole hole(String text) {
    return Hole.read(text).orElseThrow();
  }

  private static Placed placed(String[] words) {
    var holes = new LinkedHashMap<String, Hole>();
    for (String word : List.of(words).subList(1, words.length)) {
      int equals = word.indexOf('=');
      holes.put(word.substring(0, equals), hole(word.substring(equals + 1)));
    }
    return new Placed(words[0], holes, Optional.empty(), Optional.empty());
  }
}
