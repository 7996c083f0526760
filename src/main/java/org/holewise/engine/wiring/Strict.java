package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * Single repairs where links that change no net must go as well: those of {@link Singles}, and
 * where the nets are right already those that rid a layout of such a link; each strip tried.
 */
final class Strict {
  private final Wanted wanted;
  private final Layout layout;
  private final int nodes;
  private final Singles singles;
  private final List<Choice> choices = new ArrayList<>();

  private Strict(Wanted wanted, Layout layout, int nodes) {
    this.wanted = wanted;
    this.layout = layout;
    this.nodes = nodes;
    singles = Singles.of(wanted, layout, nodes);
  }

  static Strict of(Wanted wanted, Layout layout, int nodes) {
    var strict = new Strict(wanted, layout, nodes);
    if (wanted.extraLinks) {
      strict.choices.addAll(strict.singles.choices());
    } else if (!strict.right()) {
      strict.singles.choices().forEach(strict::keep);
      strict.rid();
    }
    return strict;
  }

  boolean right() {
    return singles.right() && (wanted.extraLinks || !Spares.any(wanted.terminals, layout));
  }

  Collection<Choice> choices() {
    return choices;
  }

  /** The nets being right: links removed, ends and leads moved to where a link leads to no pin. */
  private void rid() {
    int[] nets = singles.nets();
    for (int pin = 0; pin < layout.pin().length && nets.length > 0; pin++) {
      int strip = layout.pin()[pin];
      if (strip >= 0 && !layout.fixedPin()[pin]) {
        keep(new Choice.Lead(pin, nets[strip], nets[strip], ends(nets, strip)));
      }
    }
    for (int link = 0; link < layout.links() && nets.length > 0; link++) {
      for (int end = 0; end < 2; end++) {
        int strip = layout.end()[2 * link + end];
        if (!layout.fixedEnd()[2 * link + end]) {
          int net = strip < 0 ? -1 : nets[strip];
          keep(new Choice.End(link, end, net, net, ends(nets, strip)));
          if (end == 1) {
            keep(new Choice.Remove(link, net, -1));
          }
        }
      }
    }
  }

  /** Strips of a strip's net at which links end. */
  private Map<Integer, Integer> ends(int[] nets, int strip) {
    var ends = new LinkedHashMap<Integer, Integer>();
    for (int end : layout.end()) {
      if (end >= 0 && strip >= 0 && end != strip && nets[end] == nets[strip]) {
        ends.put(end, nets[end]);
      }
    }
    return ends;
  }

  /** Keeps of a choice what makes the layout right. */
  private void keep(Choice choice) {
    if (choice instanceof Choice.Lead lead) {
      var to = rid(lead.to(), strip -> new Fix.Lead(lead.pin(), strip));
      if (!to.isEmpty()) {
        choices.add(new Choice.Lead(lead.pin(), lead.net(), lead.joins(), to));
      }
    } else if (choice instanceof Choice.End end) {
      var to = rid(end.to(), strip -> new Fix.End(end.link(), end.end(), strip));
      if (!to.isEmpty()) {
        choices.add(new Choice.End(end.link(), end.end(), end.net(), end.joins(), to));
      }
    } else if (choice instanceof Choice.Add add) {
      keep(add);
    } else if (choice instanceof Choice.Remove gone) {
      if (rids(new Fix.Remove(gone.link()))) {
        choices.add(gone);
      }
    } else if (rids(new Fix.Place(((Choice.Place) choice).part()))) {
      choices.add(choice);
    }
  }

  private void keep(Choice.Add add) {
    int one = add.from().keySet().iterator().next();
    int other = add.to().keySet().iterator().next();
    var to = rid(add.to(), strip -> new Fix.Add(one, strip));
    var from =
        rid(
            add.from(),
            strip -> new Fix.Add(strip, to.keySet().stream().findFirst().orElse(other)));
    if (!to.isEmpty() && !from.isEmpty()) {
      choices.add(new Choice.Add(add.net(), from, to));
    }
  }

  private Map<Integer, Integer> rid(Map<Integer, Integer> strips, IntFunction<Fix> fix) {
    var right = new LinkedHashMap<Integer, Integer>();
    strips.forEach(
        (strip, net) -> {
          if (rids(fix.apply(strip))) {
            right.put(strip, net);
          }
        });
    return right;
  }

  private boolean rids(Fix fix) {
    Layout after = layout.after(fix);
    return !Spares.any(wanted.terminals, after) && Singles.of(wanted, after, nodes).right();
  }
}
