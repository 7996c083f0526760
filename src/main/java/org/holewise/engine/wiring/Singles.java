package org.holewise.engine.wiring;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.netlist.DisjointSets;

/**
 * Every single repair that makes a layout right, each with every strip that it may use.
 *
 * <p><b>Method.</b> A layout that one repair makes right has ways of cost 1 in {@link Search}, and
 * each such repair shows in one of them: a lead moves; or one link must go; or one net is in two
 * pieces, which a new link joins, or an end of a link, or a twin, that its own piece can spare.
 */
final class Singles {
  private final Map<Object, Choice> found = new LinkedHashMap<>();
  private int[] nets = new int[0];

  private Singles() {}

  /**
   * The repairs; none where the layout is right already or needs more than one.
   *
   * @param nodes how many nodes to look at; where that is not enough, some may be left out
   */
  static Singles of(Wanted wanted, Layout layout, int nodes) {
    var singles = new Singles();
    var missing = layout.missing();
    if (missing.size() <= 1) {
      new Search(wanted, layout)
          .run(1 - missing.size(), nodes, (way, joints) -> singles.look(joints, missing));
    }
    return singles;
  }

  /** Whether nothing needs repair. */
  boolean right() {
    return nets.length > 0;
  }

  /** Where nothing needs repair: the wanted net of each strip, -1 for none. */
  int[] nets() {
    return nets;
  }

  Collection<Choice> choices() {
    return right() ? List.of() : found.values();
  }

  private boolean look(Joints joints, List<Integer> missing) {
    if (!missing.isEmpty()) {
      add(new Choice.Place(missing.get(0)));
      return false;
    }
    if (joints.cost == 0) {
      nets = joints.label;
      return false;
    }
    if (joints.way.moved() == 1) {
      lead(joints);
    } else if (joints.cuts.size() == 1) {
      cut(joints, joints.cuts.get(0));
    } else {
      join(joints);
    }
    return true;
  }

  private void add(Choice choice) {
    found.merge(choice.key(), choice, Choice::or);
  }

  private void lead(Joints joints) {
    Search way = joints.way;
    Terminals t = way.wanted.terminals;
    for (int pin = 0; pin < way.state.length; pin++) {
      boolean first = t.pinsOf[t.terminal[pin]][0] == pin;
      if (way.state[pin] == Search.MOVES || (way.loose[t.terminal[pin]] && first)) {
        int strip = way.layout.pin()[pin];
        int net = way.want[pin];
        add(
            new Choice.Lead(
                pin,
                t.size[net] > 1 ? net : -1,
                strip < 0 ? -1 : joints.label[strip],
                targets(joints, pin, net)));
      }
    }
  }

  private Map<Integer, Integer> targets(Joints joints, int pin, int net) {
    var pieces = joints.piecesOf.get(net);
    int twin = stayingTwin(joints.way, pin);
    var to = new LinkedHashMap<Integer, Integer>();
    for (int piece : pieces) {
      if (pieces.size() == 1 || joints.pieces.find(piece) != joints.pieces.find(twin)) {
        to.putAll(joints.strips(piece));
      }
    }
    if (pieces.isEmpty() || (twin >= 0 && pieces.size() == 1)) {
      to.putAll(anywhere(joints, joints.way.layout.pin()[pin]));
    }
    return to;
  }

  /** Strip of a twin that stays, -1 where there is none. */
  private static int stayingTwin(Search way, int pin) {
    for (int twin : way.wanted.terminals.pinsOf[way.wanted.terminals.terminal[pin]]) {
      if (twin != pin && way.state[twin] == Search.STAYS) {
        return way.layout.pin()[twin];
      }
    }
    return -1;
  }

  /** Strips of no net, but for one. */
  private static Map<Integer, Integer> anywhere(Joints joints, int but) {
    var strips = new LinkedHashMap<Integer, Integer>();
    for (int strip = 0; strip < joints.label.length; strip++) {
      if (joints.label[strip] < 0 && strip != but) {
        strips.put(strip, -1);
      }
    }
    return strips;
  }

  private void cut(Joints joints, int link) {
    int[] end = joints.way.layout.end();
    boolean whole = joints.piecesOf.stream().allMatch(pieces -> pieces.size() <= 1);
    if (whole) {
      add(new Choice.Remove(link, joints.label[end[2 * link]], joints.label[end[2 * link + 1]]));
    }
    for (int moved = 0; moved < 2; moved++) {
      int kept = end[2 * link + 1 - moved];
      int net = joints.label[kept];
      var to = new LinkedHashMap<Integer, Integer>();
      if (whole) {
        to.putAll(joints.strips(kept));
        to.putAll(anywhere(joints, -1));
      } else if (joints.piecesOf.get(net).size() == 2) {
        to.putAll(otherPiece(joints, net, kept));
      }
      if (!to.isEmpty()) {
        add(new Choice.End(link, moved, net, joints.label[end[2 * link + moved]], to));
      }
    }
  }

  private void join(Joints joints) {
    int net = 0;
    while (joints.piecesOf.get(net).size() < 2) {
      net++;
    }
    int one = joints.piecesOf.get(net).get(0);
    int other = joints.piecesOf.get(net).get(1);
    add(new Choice.Add(net, joints.strips(one), joints.strips(other)));
    for (int link = 0; link < joints.way.layout.links(); link++) {
      spareLink(joints, net, link);
    }
    for (int[] twins : joints.way.wanted.terminals.pinsOf) {
      for (int pin : twins.length > 1 ? twins : new int[0]) {
        spareTwin(joints, net, pin);
      }
    }
  }

  private void spareLink(Joints joints, int net, int link) {
    Layout layout = joints.way.layout;
    DisjointSets rest = Joints.pieces(joints.way, joints.label, link, -1);
    for (int moved = 0; moved < 2; moved++) {
      int kept = layout.end()[2 * link + 1 - moved];
      int gone = layout.end()[2 * link + moved];
      if (kept >= 0 && !layout.fixedEnd()[2 * link + moved] && holds(joints, net, kept, rest)) {
        add(
            new Choice.End(
                link,
                moved,
                net,
                gone < 0 ? -1 : joints.label[gone],
                otherPiece(joints, net, kept)));
      }
    }
  }

  private void spareTwin(Joints joints, int net, int pin) {
    Search way = joints.way;
    int twin = stayingTwin(way, pin);
    if (way.state[pin] == Search.STAYS
        && twin >= 0
        && way.want[pin] == net
        && !way.layout.fixedPin()[pin]
        && holds(joints, net, twin, Joints.pieces(way, joints.label, -1, pin))) {
      add(new Choice.Lead(pin, net, net, otherPiece(joints, net, twin)));
    }
  }

  /** Whether a strip is still joined to every strip of its piece in which a pin stays. */
  private static boolean holds(Joints joints, int net, int strip, DisjointSets rest) {
    boolean any = false;
    for (int pinned : joints.way.strips.used) {
      if (joints.way.label[pinned] == net
          && joints.pieces.find(pinned) == joints.pieces.find(strip)) {
        any = true;
        if (rest.find(pinned) != rest.find(strip)) {
          return false;
        }
      }
    }
    return any;
  }

  private static Map<Integer, Integer> otherPiece(Joints joints, int net, int strip) {
    for (int piece : joints.piecesOf.get(net)) {
      if (joints.pieces.find(piece) != joints.pieces.find(strip)) {
        return joints.strips(piece);
      }
    }
    return Map.of();
  }
}
