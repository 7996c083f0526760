package org.holewise.engine.part;

import java.util.List;
import java.util.Map;

/** A switch of one pole and two positions: one piece of metal when closed, nothing when open. */
final class Switch implements Kind {

  @Override
  public String name() {
    return "switch";
  }

  @Override
  public List<Field> fields() {
    return List.of(new Field.Flag("closed", false, "Whether it conducts; open if not given."));
  }

  @Override
  public List<String> pins(Fields fields) {
    return List.of("1", "2");
  }

  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return List.of(Map.of("1", "2", "2", "1"));
  }

  @Override
  public void connect(Part part, Network network) {
    if (part.fields().flag("closed", false)) {
      network.join(network.pin("1"), network.pin("2"));
    }
  }

  @Override
  public Footprint footprint(Fields fields) {
    return new Footprint.Leads(1, 6);
  }
}
