package org.holewise.engine.board;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.part.Part;

/** What is odd about the leads of one part among themselves; keys in {@link BuildCheck}. */
record LeadCheck(
    String at, BoardModel board, Placed placed, List<String> pins, List<List<String>> twins) {

  static List<Finding> findings(String at, BoardModel board, Placed placed, Part part) {
    var check =
        new LeadCheck(
            at, board, placed, part.kind().pins(part.fields()), part.kind().twins(part.fields()));
    var findings = new ArrayList<Finding>();
    check.unknown(findings);
    check.missing(findings);
    check.shorted(findings);
    return findings;
  }

  private void unknown(List<Finding> findings) {
    for (String pin : placed.holes().keySet()) {
      if (!pins.contains(pin)) {
        findings.add(
            Finding.of(at + "/holes/" + BuildCheck.escape(pin), "pin-unknown", placed.ref(), pin));
      }
    }
  }

  private void missing(List<Finding> findings) {
    for (String pin : pins) {
      boolean there =
          placed.hole(pin).isPresent()
              || pins.stream().anyMatch(p -> twins(pin, p) && placed.hole(p).isPresent());
      if (!there) {
        findings.add(Finding.of(at + "/holes", "lead-missing", placed.ref(), pin));
      }
    }
  }

  private void shorted(List<Finding> findings) {
    for (int i = 0; i < pins.size(); i++) {
      for (int j = i + 1; j < pins.size(); j++) {
        String one = pins.get(i);
        String other = pins.get(j);
        int strip = strip(one);
        if (strip >= 0 && strip == strip(other) && !twins(one, other)) {
          findings.add(
              Finding.of(
                  at,
                  "same-strip",
                  placed.ref(),
                  one,
                  other,
                  placed.hole(one).orElseThrow(),
                  placed.hole(other).orElseThrow()));
        }
      }
    }
  }

  private int strip(String pin) {
    return placed.hole(pin).map(board::stripOrNone).orElse(-1);
  }

  private boolean twins(String one, String other) {
    return twins.stream().anyMatch(group -> group.contains(one) && group.contains(other));
  }
}
