package org.holewise.document.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Field;
import org.holewise.engine.part.Fields;

/** The shapes of what the registry says about the parts of a kind. */
public final class FieldShapes {
  private static final int LONGEST_TEXT = 80;

  private FieldShapes() {}

  /** Members for the fields, in their order. */
  public static List<Member<?>> members(List<Field> fields) {
    List<Member<?>> members = new ArrayList<>();
    fields.forEach(field -> members.add(member(field)));
    return members;
  }

  /**
   * Names of which exactly one is needed: rows, or what each of them must say where there is only
   * one and it is said of the part itself. Empty for a kind without rows.
   */
  public static List<String> alternatives(List<Field> fields) {
    List<String> alternatives = new ArrayList<>();
    for (Field field : fields) {
      if (field instanceof Field.Rows rows) {
        alternatives.add(rows.name());
        rows.fields().stream()
            .filter(inner -> inner instanceof Field.Number number && number.required())
            .map(Field::name)
            .filter(name -> named(fields, name).isPresent())
            .forEach(alternatives::add);
      }
    }
    return alternatives;
  }

  private static Member<?> member(Field field) {
    String name = field.name();
    String meaning = field.meaning();
    if (field instanceof Field.Number number) {
      return number(number);
    }
    if (field instanceof Field.Flag flag) {
      return Member.optional(name, new FlagShape(), meaning).otherwise(flag.fallback());
    }
    if (field instanceof Field.Choice choice) {
      var member = Member.optional(name, new ChoiceShape(choice.options()), meaning);
      return choice.fallback().map(member::otherwise).orElse(member);
    }
    if (field instanceof Field.Group group) {
      var shape = RecordShape.of(members(group.fields()));
      return group.required()
          ? Member.required(name, shape, meaning)
          : Member.optional(name, shape, meaning);
    }
    if (field instanceof Field.Rows rows) {
      var row = RecordShape.of(members(rows.fields()));
      return Member.optional(name, new ListShape<>(row, 1, rows.most(), false), meaning);
    }
    return Member.optional(name, TextShape.line(LONGEST_TEXT), meaning);
  }

  private static Member<?> number(Field.Number field) {
    var shape = new QuantityShape(field.unit(), field.least(), field.most(), field.words());
    if (field.required()) {
      return Member.required(field.name(), shape, field.meaning());
    }
    var member = Member.optional(field.name(), shape, field.meaning());
    return field.fallback().isPresent() ? member.otherwise(field.fallback().getAsDouble()) : member;
  }

  /** What was read, as the engine's fields; members of other names are left out. */
  public static Fields fields(Values values, List<Field> fields) {
    Map<String, Object> plain = new LinkedHashMap<>();
    values
        .values()
        .forEach(
            (name, value) ->
                named(fields, name).ifPresent(field -> plain.put(name, plain(value, field))));
    return new Fields(plain);
  }

  private static Optional<Field> named(List<Field> fields, String name) {
    return fields.stream().filter(field -> field.name().equals(name)).findFirst();
  }

  private static Object plain(Object value, Field field) {
    if (field instanceof Field.Group group) {
      return fields((Values) value, group.fields());
    }
    if (field instanceof Field.Rows rows) {
      return ((List<?>) value)
          .stream().map(row -> fields((Values) ((Spotted<?>) row).value(), rows.fields())).toList();
    }
    return value;
  }
}
