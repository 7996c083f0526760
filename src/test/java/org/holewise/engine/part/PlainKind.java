package org.holewise.engine.part;

import java.util.List;
import java.util.Map;

/** A kind with pins and no law, for tests of boards and nets. */
public record PlainKind(
    String name,
    List<String> pins,
    List<Map<String, String>> ways,
    List<List<String>> joined,
    boolean source)
    implements Kind {

  public static final PlainKind RESISTOR =
      new PlainKind(
          "resistor", List.of("1", "2"), List.of(Map.of("1", "2", "2", "1")), List.of(), false);
  public static final PlainKind SWITCH =
      new PlainKind(
          "switch", List.of("1", "2"), List.of(Map.of("1", "2", "2", "1")), List.of(), false);
  public static final PlainKind LED =
      new PlainKind("led", List.of("a", "k"), List.of(), List.of(), false);
  public static final PlainKind BATTERY =
      new PlainKind("battery", List.of("+", "-"), List.of(), List.of(), true);
  public static final PlainKind NPN =
      new PlainKind("npn", List.of("c", "b", "e"), List.of(), List.of(), false);
  public static final PlainKind POTENTIOMETER =
      new PlainKind("potentiometer", List.of("1", "w", "2"), List.of(), List.of(), false);
  public static final PlainKind BUTTON =
      new PlainKind(
          "button",
          List.of("1", "1a", "2", "2a"),
          List.of(
              Map.of("1", "1a", "1a", "1", "2", "2", "2a", "2a"),
              Map.of("1", "1", "1a", "1a", "2", "2a", "2a", "2"),
              Map.of("1", "1a", "1a", "1", "2", "2a", "2a", "2"),
              Map.of("1", "2", "2", "1", "1a", "2a", "2a", "1a"),
              Map.of("1", "2a", "2a", "1", "1a", "2", "2", "1a"),
              Map.of("1", "2", "1a", "2a", "2", "1a", "2a", "1"),
              Map.of("1", "2a", "1a", "2", "2", "1", "2a", "1a")),
          List.of(List.of("1", "1a"), List.of("2", "2a")),
          false);

  public Part part(String ref) {
    return new Part(ref, this, Fields.NONE);
  }

  public Part part(String ref, double value) {
    return new Part(ref, this, Fields.NONE.with("value", value));
  }

  @Override
  public List<Field> fields() {
    return List.of();
  }

  @Override
  public List<String> pins(Fields fields) {
    return pins;
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return ways;
  }

  @Override
  public List<List<String>> twins(Fields fields) {
    return joined;
  }

  @Override
  public boolean polar() {
    return pins.size() == 2 && ways.isEmpty();
  }

  @Override
  public void connect(Part part, Network network) {
    throw new UnsupportedOperationException("has no law");
  }

  @Override
  public Footprint footprint(Fields fields) {
    return source ? new Footprint.Wires() : new Footprint.Leads(1, 12);
  }
}
