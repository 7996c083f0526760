package org.holewise.document.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A list of things of one shape. Elements that cannot be read are left out of what is read.
 *
 * @param distinct whether no two elements may be written alike
 */
public record ListShape<T>(Shape<T> item, int least, int most, boolean distinct)
    implements Shape<List<Spotted<T>>> {

  @Override
  public Optional<List<Spotted<T>>> read(Place place) {
    if (!place.node().isArray()) {
      return place.wrong("not-list");
    }
    if (place.node().size() > most) {
      return place.wrong("too-many", most);
    }
    if (place.node().size() < least) {
      return place.wrong("too-few", least);
    }
    return Optional.of(items(place));
  }

  private List<Spotted<T>> items(Place place) {
    var items = new ArrayList<Spotted<T>>();
    var seen = new ArrayList<JsonNode>();
    for (int i = 0; i < place.node().size(); i++) {
      Place child = place.child(i);
      item.read(child).ifPresent(value -> items.add(new Spotted<>(child.at(), value)));
      if (distinct && seen.contains(child.node())) {
        child.wrong("twice");
      }
      seen.add(child.node());
    }
    return items;
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.ofType("array").put("minItems", least).put("maxItems", most);
    schema.set("items", item.schema());
    return distinct ? schema.put("uniqueItems", true) : schema;
  }
}
