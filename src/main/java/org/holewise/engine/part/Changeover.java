package org.holewise.engine.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A changeover switch: its middle pin c is one piece of metal with 1 or with 2. */
final class Changeover implements Kind {

  @Override
  public String name() {
    return "changeover";
  }

  @Override
  public List<Field> fields() {
    return List.of(
        new Field.Choice(
            "to", List.of("1", "2"), Optional.of("1"), "The pin that c is joined to."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("1", "c", "2");
  }

  /** Turned round with its lever thrown it does the same; nobody sees which way it was put in. */
  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return List.of();
  }

  @Override
  public void connect(Part part, Network network) {
    network.join(network.pin("c"), network.pin(part.fields().text("to").orElse("1")));
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.InLine(3);
  }
}
