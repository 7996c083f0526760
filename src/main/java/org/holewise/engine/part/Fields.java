package org.holewise.engine.part;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an exercise says of one part, in the order written: numbers in SI units as {@link Double},
 * flags as {@link Boolean}, words as {@link String}, groups as {@link Fields}, rows as a {@link
 * List} of them. Immutable; only what was said is here, a kind supplies its own defaults.
 */
public record Fields(Map<String, Object> values) {
  public static final Fields NONE = new Fields(Map.of());

  public Fields {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  public boolean has(String name) {
    return values.containsKey(name);
  }

  public OptionalDouble number(String name) {
    return values.get(name) instanceof Double d ? OptionalDouble.of(d) : OptionalDouble.empty();
  }

  public double number(String name, double fallback) {
    return number(name).orElse(fallback);
  }

  public boolean flag(String name, boolean fallback) {
    return values.get(name) instanceof Boolean b ? b : fallback;
  }

  public Optional<String> text(String name) {
    return values.get(name) instanceof String s ? Optional.of(s) : Optional.empty();
  }

  /** The group of that name, {@link #NONE} where it was not given. */
  public Fields group(String name) {
    return values.get(name) instanceof Fields f ? f : NONE;
  }

  public List<Fields> rows(String name) {
    return values.get(name) instanceof List<?> rows
        ? rows.stream().map(Fields.class::cast).toList()
        : List.of();
  }

  /** The same with one value changed or added. */
  public Fields with(String name, Object value) {
    var changed = new LinkedHashMap<>(values);
    changed.put(name, value);
    return new Fields(changed);
  }
}
