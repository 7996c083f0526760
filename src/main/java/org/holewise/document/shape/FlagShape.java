package org.holewise.document.shape;

import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** True or false. */
public record FlagShape() implements Shape<Boolean> {

  @Override
  public Optional<Boolean> read(Place place) {
    return place.node().isBoolean()
        ? Optional.of(place.node().booleanValue())
        : place.wrong("not-flag");
  }

  @Override
  public ObjectNode schema() {
    return Schemas.ofType("boolean");
  }
}
