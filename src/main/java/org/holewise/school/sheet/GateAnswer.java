package org.holewise.school.sheet;

import java.util.List;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.board.Hole;

/**
 * Whether a layout may be switched on.
 *
 * @param stops why not, what can hurt first; empty where it may
 * @param care what the exercise's own circuit asks care for
 * @param missing what is not placed yet: parts such as {@code R1}, leads such as {@code R1.2}
 */
public record GateAnswer(List<Stop> stops, List<Warning> care, List<String> missing) {
  public GateAnswer {
    stops = List.copyOf(stops);
    care = List.copyOf(care);
    missing = List.copyOf(missing);
  }

  /**
   * A reason not to switch on.
   *
   * @param kind such as {@code supply-shorted}, {@code far-over-limit}, {@code not-whole}
   * @param ref the part that is meant; empty where none is
   * @param said why, and what to do
   * @param holes where to look
   */
  public record Stop(String kind, String ref, Said said, List<Hole> holes) {}

  public boolean go() {
    return stops.isEmpty();
  }

  /** The holes of all stops, ringed. */
  public Highlight highlight() {
    return Highlight.rings(stops.stream().flatMap(s -> s.holes().stream()).distinct().toList());
  }
}
