package org.holewise.school.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.holewise.engine.part.Field;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Kind;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.QuantityText;

/**
 * What one sees of a kind of part on its label: values, colour, type. How a switch stands or a
 * transistor's gain is not on it. A bench supply or a generator is set to what is wanted, so that
 * only the number of a supply's outputs tells it from another.
 */
record Traits(String kind, List<Trait> traits, Optional<String> rows) {

  /** Fields that a label shows, in its order; a point leads into a group. */
  private static final List<String> SHOWN =
      List.of(
          "ohms",
          "farads",
          "henries",
          "hertz",
          "volts",
          "breakdown.volts",
          "tolerance",
          "rating",
          "colour",
          "type");

  private static final Pattern OUTPUTS = Pattern.compile("([2-9]) outputs");

  private record Trait(String path, Field field) {}

  static Traits of(Kind kind) {
    var rows =
        kind.fields().stream().filter(Field.Rows.class::isInstance).map(Field::name).findFirst();
    var traits = SHOWN.stream().flatMap(path -> at(path, kind.fields()).stream()).toList();
    boolean set = rows.isPresent() || kind.swings();
    return new Traits(kind.name(), set ? List.of() : traits, rows);
  }

  /** The key of a part with these fields. */
  String text(Fields fields) {
    int outputs = rows.map(name -> fields.rows(name).size()).orElse(0);
    if (outputs > 1) {
      return kind + " " + outputs + " outputs";
    }
    return written(trait -> said(fields, trait));
  }

  /** The key of what these words say; empty where one says nothing or what is needed lacks. */
  Optional<String> read(List<String> words) {
    if (rows.isPresent() && OUTPUTS.matcher(String.join(" ", words)).matches()) {
      return Optional.of(kind + " " + String.join(" ", words));
    }
    var read = new LinkedHashMap<Trait, Object>();
    int next = 0;
    while (next < words.size()) {
      int taken = take(words.subList(next, words.size()), read);
      if (taken == 0) {
        return Optional.empty();
      }
      next += taken;
    }
    boolean whole = traits.stream().allMatch(trait -> read.containsKey(trait) || !needed(trait));
    return whole
        ? Optional.of(written(trait -> Optional.ofNullable(read.get(trait))))
        : Optional.empty();
  }

  // A number may stand apart from its unit: two words before one.
  private int take(List<String> words, Map<Trait, Object> read) {
    for (int count = Math.min(2, words.size()); count > 0; count--) {
      String text = String.join(" ", words.subList(0, count));
      for (Trait trait : traits) {
        var value = read.containsKey(trait) ? Optional.empty() : value(text, trait);
        if (value.isPresent()) {
          read.put(trait, value.get());
          return count;
        }
      }
    }
    return 0;
  }

  private Optional<Object> value(String text, Trait trait) {
    if (trait.field() instanceof Field.Number number) {
      return number(text, number, trait.equals(traits.get(0)));
    }
    if (trait.field() instanceof Field.Choice choice) {
      return choice.options().stream()
          .filter(text::equalsIgnoreCase)
          .findFirst()
          .map(Object.class::cast);
    }
    return text.contains(" ") ? Optional.empty() : Optional.of(text);
  }

  // Only the first value speaks for itself without a unit.
  private static Optional<Object> number(String text, Field.Number field, boolean first) {
    boolean bare = Character.isDigit(text.charAt(text.length() - 1)) && text.matches("[0-9.,]+");
    if ((first || !bare)
        && QuantityText.parse(text, field.unit()) instanceof Parsed.Value read
        && read.si() >= field.least()
        && read.si() <= field.most()) {
      return Optional.of(read.si());
    }
    return Optional.empty();
  }

  private String written(Function<Trait, Optional<Object>> said) {
    var words = new ArrayList<String>();
    words.add(kind);
    traits.forEach(trait -> words.addAll(shown(trait.field(), said.apply(trait)).toList()));
    return String.join(" ", words);
  }

  private static Stream<String> shown(Field field, Optional<Object> said) {
    if (field instanceof Field.Number number) {
      var usual = number.fallback().stream().mapToObj(si -> Display.value(si, number.unit()));
      var text = said.map(si -> Display.value((Double) si, number.unit()));
      return text.filter(shown -> usual.noneMatch(shown::equals)).stream();
    }
    if (field instanceof Field.Choice choice) {
      return said.map(Object::toString).or(choice::fallback).stream();
    }
    return said
        .map(type -> type.toString().replaceAll("\\s+", "").toUpperCase(Locale.ROOT))
        .filter(type -> !type.isEmpty())
        .stream();
  }

  private static Optional<Object> said(Fields fields, Trait trait) {
    int point = trait.path().indexOf('.');
    var group = point < 0 ? fields : fields.group(trait.path().substring(0, point));
    return Optional.ofNullable(group.values().get(trait.path().substring(point + 1)));
  }

  private static boolean needed(Trait trait) {
    return trait.field() instanceof Field.Number number && number.required();
  }

  private static Optional<Trait> at(String path, List<Field> fields) {
    int point = path.indexOf('.');
    if (point < 0) {
      return named(path, fields).map(field -> new Trait(path, field));
    }
    return named(path.substring(0, point), fields)
        .filter(Field.Group.class::isInstance)
        .map(group -> ((Field.Group) group).fields())
        .flatMap(inside -> named(path.substring(point + 1), inside))
        .map(field -> new Trait(path, field));
  }

  private static Optional<Field> named(String name, List<Field> fields) {
    return fields.stream().filter(field -> Objects.equals(field.name(), name)).findFirst();
  }
}
