package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.FieldShapes;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Shape;
import org.holewise.engine.part.Kind;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Registry;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A part of an exercise: what else it may say depends on its kind, as the registry has it. */
final class PartShape implements Shape<DeclaredPart> {
  private static final ChoiceShape KINDS =
      new ChoiceShape(Registry.kinds().stream().map(Kind::name).toList(), "unknown-kind");
  private static final Member<String> REF =
      Member.required("ref", Words.REFERENCE, "Its reference, such as R1.");
  private static final Member<String> KIND = Member.required("kind", KINDS, "Its kind.");

  @Override
  public Optional<DeclaredPart> read(Place place) {
    if (!place.node().isObject()) {
      return place.wrong("not-object");
    }
    Place kind = place.child("kind");
    if (kind.node().isMissingNode()) {
      kind.wrong("missing-field", "kind");
      return Optional.of(new DeclaredPart(place.at(), ref(place)));
    }
    return Optional.of(
        KINDS
            .read(kind)
            .flatMap(Registry::kind)
            .map(known -> read(place, known))
            .orElseGet(() -> new DeclaredPart(place.at(), ref(place))));
  }

  private static DeclaredPart read(Place place, Kind kind) {
    int before = place.problems().count();
    var values = record(kind, KIND).read(place).orElseThrow();
    var ref = values.get(REF);
    boolean sound = place.problems().count() == before;
    var fields = FieldShapes.fields(values, kind.fields());
    var part = ref.filter(r -> sound).map(r -> new Part(r, kind, fields));
    var seat = values.get(SeatShape.SEAT).filter(given -> sound).map(SeatShape::seat);
    return new DeclaredPart(place.at(), ref, part, seat);
  }

  /** Only the ref of a part whose kind is unknown. */
  private static Optional<String> ref(Place place) {
    Place ref = place.child(REF.name());
    return ref.node().isMissingNode()
        ? ref.wrong("missing-field", REF.name())
        : Words.REFERENCE.read(ref);
  }

  private static RecordShape record(Kind kind, Member<String> itsKind) {
    List<Member<?>> members = new ArrayList<>(List.of(REF, itsKind, SeatShape.SEAT));
    members.addAll(FieldShapes.members(kind.fields()));
    return new RecordShape(members, FieldShapes.alternatives(kind.fields()), List.of());
  }

  @Override
  public ObjectNode schema() {
    var schema = JsonNodeFactory.instance.objectNode().put("type", "object");
    schema.putObject("properties").set("kind", KINDS.schema());
    schema.putArray("required").add("kind");
    var each = schema.putArray("allOf");
    Registry.kinds().forEach(kind -> each.add(rule(kind)));
    return schema;
  }

  /** What a part of this kind, and no other, has to be. */
  private static ObjectNode rule(Kind kind) {
    var only = new ChoiceShape(List.of(kind.name()));
    var rule = JsonNodeFactory.instance.objectNode();
    var given = rule.putObject("if");
    given.putObject("properties").set("kind", only.schema());
    given.putArray("required").add("kind");
    rule.set("then", record(kind, Member.required("kind", only, "")).schema());
    return rule;
  }
}
