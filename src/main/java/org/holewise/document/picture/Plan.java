package org.holewise.document.picture;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Hole;

/** Where everything on the board lies in the drawing. */
record Plan(View view, Tracks tracks, List<Section> sections) {

  Spot spot(double u, double v) {
    return view.spot(u, v, tracks.depth());
  }

  /** The middle of a physical hole; empty where it is not drawn. */
  Optional<Spot> spot(Hole hole) {
    return section(hole)
        .filter(section -> tracks.has(hole.track()))
        .map(section -> spot(section.at(hole.column()), tracks.at(hole.track())));
  }

  Optional<Section> section(Hole hole) {
    return sections.stream()
        .filter(section -> section.board() == hole.board() && section.shows(hole.column()))
        .findFirst();
  }

  double length() {
    return sections.get(sections.size() - 1).to();
  }

  /** The whole drawing. */
  Box frame() {
    double length = length() + 2;
    return view == View.ALONG
        ? new Box(0, 0, length, tracks.depth())
        : new Box(0, 0, tracks.depth(), length);
  }
}
