package org.holewise.document.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * An object with known members. Any other member is a problem of its own.
 *
 * @param oneOf names of members of which exactly one must be there; empty for no such rule
 * @param later names that the format has and that cannot be read yet
 */
public record RecordShape(List<Member<?>> members, List<String> oneOf, List<String> later)
    implements Shape<Values> {

  public static RecordShape of(List<Member<?>> members) {
    return new RecordShape(members, List.of(), List.of());
  }

  @Override
  public Optional<Values> read(Place place) {
    if (!place.node().isObject()) {
      return place.wrong("not-object");
    }
    Map<String, Object> values = new LinkedHashMap<>();
    for (String name : place.node().propertyNames()) {
      readMember(place.child(name), name).ifPresent(value -> values.put(name, value));
    }
    members.forEach(member -> checkThere(place, member));
    checkOneOf(place);
    return Optional.of(new Values(place.at(), values));
  }

  private Optional<?> readMember(Place child, String name) {
    for (var member : members) {
      if (member.name().equals(name)) {
        return member.shape().read(child);
      }
    }
    return child.wrong(later.contains(name) ? "not-yet" : "unknown-field", Excerpt.of(name));
  }

  private static void checkThere(Place place, Member<?> member) {
    boolean there = place.node().has(member.name());
    if (member.required() && !there) {
      place.child(member.name()).wrong("missing-field", member.name());
    }
    member
        .beside()
        .filter(other -> there && !place.node().has(other))
        .ifPresent(other -> place.child(member.name()).wrong("only-beside", other));
  }

  private void checkOneOf(Place place) {
    var there = oneOf.stream().filter(place.node()::has).toList();
    boolean notYet = later.stream().anyMatch(place.node()::has);
    if (there.isEmpty() && !oneOf.isEmpty() && !notYet) {
      place.wrong("one-of", String.join(", ", oneOf));
    }
    there.stream().skip(1).forEach(name -> place.child(name).wrong("one-only", there.get(0)));
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.ofType("object");
    var properties = schema.putObject("properties");
    members.forEach(member -> properties.set(member.name(), schema(member)));
    var required = members.stream().filter(Member::required).map(Member::name).toList();
    Schemas.put(schema, "required", required);
    addRules(schema);
    return schema.put("additionalProperties", false);
  }

  private void addRules(ObjectNode schema) {
    var dependent = JsonNodeFactory.instance.objectNode();
    for (var member : members) {
      member.beside().ifPresent(other -> Schemas.put(dependent, member.name(), other));
    }
    if (!dependent.isEmpty()) {
      schema.set("dependentRequired", dependent);
    }
    if (!oneOf.isEmpty()) {
      var either = schema.putArray("oneOf");
      oneOf.forEach(
          name -> either.add(Schemas.put(JsonNodeFactory.instance.objectNode(), "required", name)));
    }
  }

  private static ObjectNode schema(Member<?> member) {
    var schema = member.shape().schema();
    if (!member.meaning().isEmpty()) {
      schema.put("description", member.meaning());
    }
    member.fallback().ifPresent(value -> schema.putPOJO("default", value));
    return schema;
  }
}
