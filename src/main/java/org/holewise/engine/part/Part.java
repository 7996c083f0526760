package org.holewise.engine.part;

import java.util.List;

/** One part of an exercise: its reference, its kind and what the exercise says of it. Immutable. */
public record Part(String ref, Kind kind, Fields fields) {

  /** Its pins in the order of its kind. */
  public List<Pin> pins() {
    List<String> names = kind.pins(fields);
    Pin[] pins = new Pin[names.size()];
    for (int k = 0; k < pins.length; k++) {
      pins[k] = new Pin(ref, names.get(k));
    }
    return List.of(pins);
  }

  public Pin pin(String name) {
    return new Pin(ref, name);
  }

  /** The pin of a source that its voltages are counted from: minus, or the last where none is. */
  public Pin minus() {
    List<Pin> pins = pins();
    return pins.stream()
        .filter(pin -> pin.name().equals("-"))
        .findFirst()
        .orElse(pins.get(pins.size() - 1));
  }

  /** The value of a number of this part: as the exercise says, else the kind's own default (SI). */
  public double number(String field) {
    return fields
        .number(field)
        .orElseGet(
            () ->
                kind.fields().stream()
                    .filter(f -> f.name().equals(field))
                    .map(f -> ((Field.Number) f).fallback().orElseThrow())
                    .findFirst()
                    .orElseThrow());
  }

  public Part with(String field, Object value) {
    return new Part(ref, kind, fields.with(field, value));
  }

  /** Whether the two may trade places: same kind, same fields. */
  public boolean alike(Part other) {
    return kind.name().equals(other.kind.name()) && fields.equals(other.fields);
  }
}
