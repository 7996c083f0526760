package org.holewise.engine.part;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.quantity.Display;

/**
 * The value by which one picks a part out of a tray: 390 Ω, 6 V, green; empty where it has none.
 */
public final class PartValue {
  private static final List<String> TELLING =
      List.of("ohms", "farads", "henries", "volts", "colour", "type");

  private PartValue() {}

  public static String of(Part part) {
    return TELLING.stream()
        .flatMap(name -> said(part.kind().fields(), part.fields(), name).stream())
        .findFirst()
        .or(
            () ->
                part.fields().rows("outputs").stream()
                    .findFirst()
                    .flatMap(output -> output(part, output)))
        .orElse("");
  }

  private static Optional<String> output(Part part, Fields output) {
    return part.kind().fields().stream()
        .filter(field -> field instanceof Field.Rows)
        .map(field -> ((Field.Rows) field).fields())
        .flatMap(fields -> said(fields, output, "volts").stream())
        .findFirst();
  }

  private static Optional<String> said(List<Field> known, Fields fields, String name) {
    return known.stream()
        .filter(field -> field.name().equals(name))
        .findFirst()
        .flatMap(
            field ->
                field instanceof Field.Number number
                    ? fields.number(name).stream()
                        .mapToObj(si -> Display.value(si, number.unit()))
                        .findFirst()
                    : fields.text(name));
  }
}
