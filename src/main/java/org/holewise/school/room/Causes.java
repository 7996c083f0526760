package org.holewise.school.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.holewise.school.handin.Fault;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.KeptMark.Change;

/**
 * What a teacher may confirm of a hand-in: what its mark says of the wiring, whom it suspects, or
 * any kind of fault at a place that the teacher names.
 */
final class Causes {

  /** The kinds of suspects, as the format of marks names them. */
  static final List<String> KINDS =
      List.of(
          "open-contact",
          "poor-contact",
          "wrong-hole",
          "touching",
          "leftover",
          "rail-gap",
          "wrong-value",
          "swapped-parts",
          "reversed",
          "swapped-pins",
          "turned-round",
          "shifted",
          "unpowered",
          "dead-part",
          "bounce",
          "supply-off",
          "supply-low",
          "supply-reversed",
          "supply-limit",
          "meter-leads",
          "meter-scale",
          "meter-place",
          "meter-fuse",
          "meter-mode",
          "readings-exchanged",
          "none");

  private Causes() {}

  /**
   * Something to choose.
   *
   * @param group where it comes from: wiring, suspects or else
   */
  record Choice(String code, String group, String kind, String place) {}

  /** In the order in which they are offered; each kind at a place once. */
  static List<Choice> of(KeptMark mark) {
    var found = new LinkedHashMap<Fault, String>();
    mark.differences().forEach(one -> found.putIfAbsent(fault(one.change()), "wiring"));
    mark.suspects().forEach(one -> found.putIfAbsent(Fault.of(one.what()), "suspects"));
    found.keySet().removeIf(fault -> fault.kind().equals("none"));
    var choices = new ArrayList<Choice>();
    found.forEach(
        (fault, group) ->
            choices.add(new Choice("m" + choices.size(), group, fault.kind(), fault.place())));
    choices.addAll(others());
    return choices;
  }

  /** What can be confirmed where nothing is marked. */
  static List<Choice> others() {
    return KINDS.stream().map(kind -> new Choice(kind, "else", kind, "")).toList();
  }

  // What the record shows is not what suspects are about: a lead really elsewhere than recorded.
  private static Fault fault(Change change) {
    if (change.ref().isPresent()) {
      String ref = change.ref().get();
      return change
          .pin()
          .map(pin -> new Fault("wrong-strip", ref + "." + pin))
          .orElseGet(() -> new Fault("part-missing", ref));
    }
    if (change.link().isPresent()) {
      boolean whole = change.holes().size() > 1;
      return new Fault(
          whole ? "link-too-many" : "wrong-strip", "link " + (change.link().get() + 1));
    }
    return new Fault("link-missing", "");
  }
}
