package org.holewise.document.shape;

import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** A plain number within limits. */
public record NumberShape(double least, double most, boolean whole) implements Shape<Double> {

  @Override
  public Optional<Double> read(Place place) {
    if (!place.node().isNumber()) {
      return place.wrong("not-number");
    }
    double value = place.node().doubleValue();
    if (whole && value != Math.rint(value)) {
      return place.wrong("not-whole");
    }
    return value >= least && value <= most
        ? Optional.of(value)
        : place.wrong("out-of-range", plain(least), plain(most));
  }

  @Override
  public ObjectNode schema() {
    return Schemas.range(Schemas.ofType(whole ? "integer" : "number"), least, most);
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
