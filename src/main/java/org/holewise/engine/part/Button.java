package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A push button: 1 and 1a are one piece of metal, 2 and 2a another, and pressing it joins the two.
 * Twins face each other across the groove.
 */
final class Button implements Kind {
  private static final List<String> PINS = List.of("1", "1a", "2", "2a");
  private static final List<List<String>> TWINS = List.of(List.of("1", "1a"), List.of("2", "2a"));

  /** All that keep twins together, the identity left out. */
  private static final List<Map<String, String>> EXCHANGES =
      exchanges(
          List.of("1a", "1", "2", "2a"),
          List.of("1", "1a", "2a", "2"),
          List.of("1a", "1", "2a", "2"),
          List.of("2", "2a", "1", "1a"),
          List.of("2a", "2", "1", "1a"),
          List.of("2", "2a", "1a", "1"),
          List.of("2a", "2", "1a", "1"));

  @SafeVarargs
  private static List<Map<String, String>> exchanges(List<String>... images) {
    var exchanges = new ArrayList<Map<String, String>>();
    for (List<String> image : images) {
      var exchange = new LinkedHashMap<String, String>();
      for (int i = 0; i < PINS.size(); i++) {
        exchange.put(PINS.get(i), image.get(i));
      }
      exchanges.add(exchange);
    }
    return List.copyOf(exchanges);
  }

  @Override
  public String name() {
    return "button";
  }

  @Override
  public List<Field> fields() {
    return List.of(new Field.Flag("closed", false, "Whether it is pressed; not if not given."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return PINS;
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return EXCHANGES;
  }

  @Override
  public List<List<String>> twins(Fields fields) {
    return TWINS;
  }

  @Override
  public void connect(Part part, Network network) {
    network.join(network.pin("1"), network.pin("1a"));
    network.join(network.pin("2"), network.pin("2a"));
    if (part.fields().flag("closed", false)) {
      network.join(network.pin("1"), network.pin("2"));
    }
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.AcrossGroove(2);
  }
}
