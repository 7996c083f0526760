package org.holewise.engine.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.engine.netlist.DisjointSets;

/** One set of repairs that does what a way found by the search asks for. */
final class Draft {
  private final Joints joints;
  private final Search way;
  private final Ground ground;
  private final DisjointSets pieces;
  private final Map<Integer, Integer> fresh = new LinkedHashMap<>();
  private final List<Fix> fixes = new ArrayList<>();

  private Draft(Joints joints, Ground ground) {
    this.joints = joints;
    this.ground = ground;
    way = joints.way;
    pieces = Joints.pieces(way, joints.label, -1, -1);
  }

  static List<Fix> of(Joints joints, Ground ground) {
    var draft = new Draft(joints, ground);
    draft.place();
    for (int terminal = 0; terminal < draft.way.loose.length; terminal++) {
      draft.move(terminal);
    }
    draft.cut();
    draft.join();
    return draft.fixes;
  }

  private void place() {
    for (int part = 0; part < way.layout.parts().length; part++) {
      if (way.layout.parts()[part] == Layout.Presence.MISSING) {
        fixes.add(new Fix.Place(part));
      }
    }
  }

  private void move(int terminal) {
    int[] pins = way.wanted.terminals.pinsOf[terminal];
    int anchor = -1;
    for (int pin : pins) {
      if (way.state[pin] == Search.STAYS && anchor < 0) {
        anchor = way.layout.pin()[pin];
      }
    }
    for (int pin : pins) {
      if (way.state[pin] == Search.MOVES || (way.loose[terminal] && pin == pins[0])) {
        int target = anchor < 0 ? home(pin) : apart(way.want[pin], anchor);
        fixes.add(new Fix.Lead(pin, target));
        anchor = anchor < 0 ? target : anchor;
        pieces.union(anchor, target);
      }
    }
  }

  /** Where the net of a pin is, or will be. */
  private int home(int pin) {
    int net = way.want[pin];
    var of = joints.piecesOf.get(net);
    return of.isEmpty()
        ? fresh.computeIfAbsent(net, n -> ground.fresh(way.layout, pin, fresh.values()))
        : of.get(0);
  }

  /** A piece of a net that a strip is not joined to yet; the strip itself where there is none. */
  private int apart(int net, int strip) {
    for (int piece : joints.piecesOf.get(net)) {
      if (pieces.find(piece) != pieces.find(strip)) {
        return piece;
      }
    }
    return strip;
  }

  private void cut() {
    for (int i = 0; i < joints.cuts.size(); i++) {
      int link = joints.cuts.get(i);
      int kept = joints.keeps[i];
      if (kept < 0) {
        fixes.add(new Fix.Remove(link));
      } else {
        int strip = way.layout.end()[2 * link + kept];
        int target = apart(joints.label[strip], strip);
        fixes.add(new Fix.End(link, 1 - kept, target));
        pieces.union(strip, target);
      }
    }
  }

  private void join() {
    for (int net = 0; net < joints.piecesOf.size(); net++) {
      for (int piece : joints.piecesOf.get(net)) {
        int other = apart(net, piece);
        if (other != piece) {
          fixes.add(new Fix.Add(piece, other));
          pieces.union(piece, other);
        }
      }
    }
  }
}
