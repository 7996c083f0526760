package org.holewise.engine.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.quantity.Unit;

/**
 * One thing that may be said of a part of some kind. The reader of documents, the published schema,
 * the table of defaults and the authoring form are all made from these.
 */
public sealed interface Field {
  String name();

  /** One sentence for the schema and the form. */
  String meaning();

  /**
   * A quantity from {@code least} to {@code most} (SI); {@code words} are the words that may stand
   * in its place, such as {@code unknown}.
   */
  record Number(
      String name,
      Unit unit,
      double least,
      double most,
      OptionalDouble fallback,
      boolean required,
      List<String> words,
      String meaning)
      implements Field {

    public static Number required(
        String name, Unit unit, double least, double most, String meaning) {
      return new Number(name, unit, least, most, OptionalDouble.empty(), true, List.of(), meaning);
    }

    public static Number optional(
        String name, Unit unit, double least, double most, String meaning) {
      return new Number(name, unit, least, most, OptionalDouble.empty(), false, List.of(), meaning);
    }

    public static Number fallback(
        String name, Unit unit, double least, double most, double fallback, String meaning) {
      return new Number(
          name, unit, least, most, OptionalDouble.of(fallback), false, List.of(), meaning);
    }
  }

  /** True or false. */
  record Flag(String name, boolean fallback, String meaning) implements Field {}

  /** One of a few words. */
  record Choice(String name, List<String> options, Optional<String> fallback, String meaning)
      implements Field {}

  /** Free text, such as a maker's type number. */
  record Text(String name, String meaning) implements Field {}

  /** Several fields under one name, such as {@code forward: {volts, amps}}. */
  record Group(String name, List<Field> fields, boolean required, String meaning)
      implements Field {}

  /** A list of groups, such as the outputs of a supply; at least one, at most {@code most}. */
  record Rows(String name, List<Field> fields, int most, String meaning) implements Field {}
}
