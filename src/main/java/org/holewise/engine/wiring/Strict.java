package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

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
  private final int[] used;

  private Strict(Wanted wanted, Layout layout, int nodes) {
    this.wanted = wanted;
    this.layout = layout;
    this.nodes = nodes;
    singles = Singles.of(wanted, layout, nodes);
    used =
        IntStream.concat(Arrays.stream(layout.pin()), Arrays.stream(layout.end()))
            .distinct()
            .toArray();
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

  /**
   * The nets being right: links removed, leads moved to where a link ends (twins anywhere), ends
   * moved to strips in use. The nets may come out right in another way then.
   */
  private void rid() {
    int[] nets = singles.nets();
    if (nets.length == 0) {
      return;
    }
    for (int pin = 0; pin < layout.pin().length; pin++) {
      int strip = layout.pin()[pin];
      if (strip >= 0 && !layout.fixedPin()[pin]) {
        var to = but(strip, nets, layout.end());
        if (wanted.terminals.pinsOf[wanted.terminals.terminal[pin]].length > 1) {
          IntStream.range(0, layout.strips())
              .filter(other -> !used(other))
              .forEach(other -> to.put(other, -1));
        }
        keep(new Choice.Lead(pin, nets[strip], nets[strip], to));
      }
    }
    for (int end = 0; end < layout.end().length; end++) {
      int strip = layout.end()[end];
      int net = strip < 0 ? -1 : nets[strip];
      if (!layout.fixedEnd()[end]) {
        keep(new Choice.End(end / 2, end % 2, net, net, but(strip, nets, used)));
        if (end % 2 == 1) {
          keep(new Choice.Remove(end / 2, net, -1));
        }
      }
    }
  }

  /** Strips with their nets, but for one. */
  private static Map<Integer, Integer> but(int strip, int[] nets, int[] strips) {
    var others = new LinkedHashMap<Integer, Integer>();
    for (int other : strips) {
      if (other >= 0 && other != strip) {
        others.put(other, nets[other]);
      }
    }
    return others;
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

  /** Strips of one side that go with the same strips of the other are one choice. */
  private void keep(Choice.Add add) {
    var sides = new LinkedHashMap<Map<Integer, Integer>, Map<Integer, Integer>>();
    add.from()
        .forEach(
            (from, net) -> {
              var to = rid(add.to(), strip -> new Fix.Add(from, strip));
              sides.computeIfAbsent(to, strips -> new LinkedHashMap<>()).put(from, net);
            });
    sides.forEach(
        (to, from) -> {
          if (!to.isEmpty()) {
            choices.add(new Choice.Add(add.net(), from, to));
          }
        });
  }

  /** The strips that do; of those that nothing touches, all do or none. */
  private Map<Integer, Integer> rid(Map<Integer, Integer> strips, IntFunction<Fix> fix) {
    var right = new LinkedHashMap<Integer, Integer>();
    var untouched = new LinkedHashMap<Integer, Integer>();
    strips.forEach(
        (strip, net) -> {
          if (!used(strip)) {
            untouched.put(strip, net);
          } else if (rids(fix.apply(strip))) {
            right.put(strip, net);
          }
        });
    if (untouched.keySet().stream().limit(1).anyMatch(strip -> rids(fix.apply(strip)))) {
      right.putAll(untouched);
    }
    return right;
  }

  private boolean used(int strip) {
    return IntStream.of(used).anyMatch(other -> other == strip);
  }

  private boolean rids(Fix fix) {
    Layout after = layout.after(fix);
    return !Spares.any(wanted.terminals, after) && Singles.of(wanted, after, nodes).right();
  }
}
