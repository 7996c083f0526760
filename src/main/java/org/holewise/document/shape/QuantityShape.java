package org.holewise.document.shape;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.quantity.QuantityText;
import org.holewise.engine.quantity.Unit;
import tools.jackson.databind.node.ObjectNode;

/**
 * A quantity: a number in SI units, a text such as {@code 4k7}, or one of a few words. Read as a
 * {@link Double} in SI units, or as the word.
 *
 * @param least smallest value (SI)
 * @param most largest value (SI)
 */
public record QuantityShape(Unit unit, double least, double most, List<String> words)
    implements Shape<Object> {
  private static final int LONGEST = 40;

  @Override
  public Optional<Object> read(Place place) {
    if (place.node().isNumber()) {
      return inRange(place, place.node().doubleValue());
    }
    if (!place.node().isString()) {
      return place.wrong("not-quantity", unit.symbol());
    }
    String text = place.node().stringValue();
    if (text.codePointCount(0, text.length()) > LONGEST) {
      return place.wrong("too-long", LONGEST);
    }
    if (words.contains(text)) {
      return Optional.of(text);
    }
    return QuantityText.parse(text, unit) instanceof Parsed.Value value
        ? inRange(place, value.si())
        : place.wrong("unreadable-quantity", Excerpt.of(text), unit.symbol());
  }

  private Optional<Object> inRange(Place place, double value) {
    return value >= least && value <= most
        ? Optional.of(value)
        : place.wrong("out-of-range", Display.value(least, unit), Display.value(most, unit));
  }

  @Override
  public ObjectNode schema() {
    var schema = Schemas.range(Schemas.ofType("number", "string"), least, most);
    return schema.put("maxLength", LONGEST);
  }
}
