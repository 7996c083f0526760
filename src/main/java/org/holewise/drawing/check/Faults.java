package org.holewise.drawing.check;

import java.util.ArrayList;
import java.util.List;
import org.holewise.drawing.check.Check.Fault;

/** What was found so far. */
final class Faults {
  private final List<Fault> found = new ArrayList<>();

  void add(String law, List<String> parts, List<String> nets) {
    found.add(new Fault(law, parts, nets));
  }

  List<Fault> found() {
    return List.copyOf(found);
  }
}
