package org.holewise.document.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * An object whose members have names of the writer's choosing and values of one shape, in the order
 * written. Members that cannot be read are left out.
 *
 * @param name of the names
 */
public record MapShape<T>(TextShape<?> name, Shape<T> value, int most)
    implements Shape<Map<String, Spotted<T>>> {

  @Override
  public Optional<Map<String, Spotted<T>>> read(Place place) {
    if (!place.node().isObject()) {
      return place.wrong("not-object");
    }
    if (place.node().size() > most) {
      return place.wrong("too-many", most);
    }
    Map<String, Spotted<T>> members = new LinkedHashMap<>();
    for (String key : place.node().propertyNames()) {
      Place child = place.child(key);
      if (named(child, key)) {
        value.read(child).ifPresent(v -> members.put(key, new Spotted<>(child.at(), v)));
      }
    }
    return Optional.of(members);
  }

  private boolean named(Place child, String key) {
    if (key.codePointCount(0, key.length()) <= name.most() && name.pattern().matcher(key).find()) {
      return true;
    }
    return child.wrong("bad-name", name.most()).isPresent();
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.ofType("object").put("maxProperties", most);
    schema.set("propertyNames", name.schema());
    schema.set("additionalProperties", value.schema());
    return schema;
  }
}
