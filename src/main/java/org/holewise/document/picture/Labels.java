package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.BoardPicture.Label;

/**
 * Places texts so that none covers another: first those with a place of their own, then each of the
 * rest at the best of the places round what it names, the nearer and the less covered the better. A
 * text for which there is no place is left out.
 */
final class Labels {
  private static final int RINGS = 14;
  private static final double STEP = 8;
  private static final double NEAR = 12;

  private static final double[][] WAYS = {
    {0, -1},
    {0, 1},
    {1, 0},
    {-1, 0},
    {0.5, -1},
    {-0.5, -1},
    {0.5, 1},
    {-0.5, 1},
    {1, -1},
    {-1, -1},
    {1, 1},
    {-1, 1},
    {1, 0.5},
    {-1, 0.5},
    {1, -0.5},
    {-1, -0.5}
  };

  private final Box frame;
  private final List<Label> labels = new ArrayList<>();
  private final List<Box> avoided = new ArrayList<>();

  Labels(Box frame) {
    this.frame = frame;
  }

  private record Style(double size, double each, double padding) {
    static Style of(String name) {
      return switch (name) {
        case "part", "link" -> new Style(12, 7.3, 8);
        case "name" -> new Style(12, 7.3, 0);
        case "pin" -> new Style(11, 6.8, 5);
        case "sign" -> new Style(15, 9, 2);
        case "gap" -> new Style(9, 5.2, 1);
        default -> new Style(11, 6.6, 2);
      };
    }

    Box around(Spot at, String text) {
      return Box.around(at, each * text.length() + padding, size + 4);
    }
  }

  /** Something that texts should rather not cover. */
  void avoid(Box box) {
    avoided.add(box);
  }

  /** A text with a place of its own. */
  void fix(String text, String style, Spot at) {
    put(text, style, Style.of(style).around(at, text), "");
  }

  /** A text beside what covers {@code named}. */
  void beside(String text, String style, Box named) {
    Box size = Style.of(style).around(named.centre(), text);
    best(places(named, size), named).ifPresent(box -> put(text, style, box, leader(box, named)));
  }

  /** The first of the cheapest free places; one that is far away need not be looked at closely. */
  private Optional<Box> best(List<Box> places, Box named) {
    Optional<Box> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Box box : places) {
      double cost = 4 * apart(box, named);
      if (cost < least && box.inside(frame) && free(box)) {
        cost += covered(box);
        if (cost < least) {
          least = cost;
          best = Optional.of(box);
        }
      }
    }
    return best;
  }

  List<Label> placed() {
    return List.copyOf(labels);
  }

  private boolean free(Box box) {
    for (Label label : labels) {
      if (label.extent().shared(box) > 0) {
        return false;
      }
    }
    return true;
  }

  private double covered(Box box) {
    double covered = 0;
    for (Box other : avoided) {
      covered += other.shared(box);
    }
    return covered;
  }

  private static List<Box> places(Box named, Box size) {
    var places = new ArrayList<Box>();
    for (int ring = 0; ring < RINGS; ring++) {
      double dx = (named.width() + size.width()) / 2 + 1 + ring * STEP;
      double dy = (named.height() + size.height()) / 2 + 1 + ring * STEP;
      for (double[] way : WAYS) {
        var at = named.centre().plus(way[0] * dx, way[1] * dy);
        places.add(Box.around(at, size.width(), size.height()));
      }
    }
    return places;
  }

  /** The distance between two boxes; 0 where they touch. */
  private static double apart(Box one, Box other) {
    double dx = Math.max(other.x() - one.x() - one.width(), one.x() - other.x() - other.width());
    double dy = Math.max(other.y() - one.y() - one.height(), one.y() - other.y() - other.height());
    return Math.max(0, Math.max(dx, dy));
  }

  private static String leader(Box box, Box named) {
    return apart(box, named) <= NEAR
        ? ""
        : Pen.plain()
            .move(box.centre().x(), box.centre().y())
            .line(named.centre().x(), named.centre().y())
            .path();
  }

  private void put(String text, String style, Box extent, String leader) {
    double baseline = Spot.tenths(extent.centre().y() + 0.36 * Style.of(style).size());
    labels.add(new Label(text, style, extent, baseline, leader));
  }
}
