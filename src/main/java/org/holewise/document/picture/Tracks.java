package org.holewise.document.picture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Rail;

/**
 * Where the rows and rails of a board lie across it, from the side of row a (px). Of the two rails
 * of a pair the plus rail is drawn nearer to row a on its side and farther from row j on the other,
 * as boards are commonly printed.
 */
record Tracks(Map<String, Double> across, double depth) {
  /** As far apart as targets for a finger have to be; fourteen tracks and a groove are 360 px. */
  static final double PITCH = 24;

  private static final double EDGE = 15;

  /** Between a rail and the nearest row: the column numbers stand there. */
  private static final double CHANNEL = 30;

  /** Between the edge and the nearest row where there are no rails. */
  private static final double BARE = 30;

  private static final double GROOVE = 30;

  static Tracks of(BoardModel model) {
    List<String> rails = model.rails().stream().map(Rail::track).toList();
    var across = new HashMap<String, Double>();
    List<String> before = Stream.of("-a", "+a").filter(rails::contains).toList();
    List<String> after = Stream.of("-j", "+j").filter(rails::contains).toList();
    double v = put(across, EDGE, before);
    v = put(across, before.isEmpty() ? BARE : v + CHANNEL, List.of("a", "b", "c", "d", "e"));
    v = put(across, v + GROOVE, List.of("f", "g", "h", "i", "j"));
    double depth = after.isEmpty() ? v + BARE : put(across, v + CHANNEL, after) + EDGE;
    return new Tracks(across, depth);
  }

  /** Lays tracks one pitch apart; answers where the last one lies. */
  private static double put(Map<String, Double> across, double from, List<String> tracks) {
    for (int i = 0; i < tracks.size(); i++) {
      across.put(tracks.get(i), from + i * PITCH);
    }
    return from + Math.max(0, tracks.size() - 1) * PITCH;
  }

  double at(String track) {
    Double v = across.get(track);
    if (v == null) {
      throw new IllegalArgumentException("no such track here: " + track);
    }
    return v;
  }

  boolean has(String track) {
    return across.containsKey(track);
  }

  /** Where the column numbers stand beside row a, and beside row j. */
  List<Double> numbers() {
    return List.of(at("a") - CHANNEL / 2, at("j") + CHANNEL / 2);
  }
}
