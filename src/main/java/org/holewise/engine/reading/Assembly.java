package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.netlist.DisjointSets;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.Point;

/**
 * What stands on the bench: an exercise's parts on some nets, perhaps with something wrong.
 * Immutable.
 *
 * @param places where the nets' holes are known, to probe them by hole
 * @param changes fields of parts that are really otherwise
 * @param edits what else differs
 * @param takenFor leads that are really other leads of their part, as when it was turned round
 */
public record Assembly(
    Exercise exercise,
    Netlist netlist,
    HoleNets places,
    List<Condition.Setting> changes,
    List<Edit> edits,
    Map<Pin, Pin> takenFor) {

  /** Finds the net at a hole; −1 where nothing is there. */
  public interface HoleNets {
    int netAt(org.holewise.engine.board.Hole hole);

    HoleNets NONE = hole -> -1;
  }

  public static Assembly of(Exercise exercise, Netlist netlist, HoleNets places) {
    return new Assembly(exercise, netlist, places, List.of(), List.of(), Map.of());
  }

  public Assembly on(Netlist other, HoleNets otherPlaces) {
    return new Assembly(exercise, other, otherPlaces, changes, edits, takenFor);
  }

  public Assembly edited(Edit... more) {
    return new Assembly(exercise, netlist, places, changes, joined(edits, List.of(more)), takenFor);
  }

  public Assembly changed(String ref, String field, Object value) {
    var setting = new Condition.Setting(ref, field, value);
    return new Assembly(
        exercise, netlist, places, joined(changes, List.of(setting)), edits, takenFor);
  }

  /** Leads really being other leads: the record's {@code R1.1} is physically {@code R1.2} … */
  public Assembly mistaken(Map<Pin, Pin> really) {
    var moves = new ArrayList<>(edits);
    really.forEach((lead, actual) -> moves.add(new Edit.Moved(actual, netlist.net(lead))));
    return new Assembly(exercise, netlist, places, changes, moves, really);
  }

  /**
   * What is wrong with this and what is wrong with the other at once, each being a record with
   * something wrong; empty where one has other nets than the record and the other's edits speak of
   * the record's.
   */
  public Optional<Assembly> and(Assembly other, Assembly record) {
    boolean onRecord = netlist == record.netlist && other.netlist == record.netlist;
    if (!onRecord && !unwired(record) && !other.unwired(record)) {
      return Optional.empty();
    }
    Assembly wired = unwired(record) ? other : this;
    Map<Pin, Pin> taken = new LinkedHashMap<>(takenFor);
    taken.putAll(other.takenFor);
    return Optional.of(
        new Assembly(
            exercise,
            wired.netlist,
            wired.places,
            joined(changes, other.changes),
            joined(edits, other.edits),
            taken));
  }

  /** Whether nothing is wired otherwise than on the record. */
  private boolean unwired(Assembly record) {
    return netlist == record.netlist && edits.isEmpty();
  }

  /** Whether the other can be had from this one's circuits, which have no edits. */
  boolean lendsTo(Assembly other) {
    return edits.isEmpty() && exercise == other.exercise;
  }

  /** The other's circuit, made from this one's, which has no edits. */
  Circuit lent(Circuit own, Assembly other, Condition condition) {
    Circuit circuit = netlist == other.netlist ? own : own.on(other.netlist);
    return circuit.with(joined(replaced(other, condition), other.edits));
  }

  /** Parts that the other has instead; after other nets all that are not as the exercise says. */
  private List<Edit> replaced(Assembly other, Condition condition) {
    if (changes.equals(other.changes) && (changes.isEmpty() || netlist == other.netlist)) {
      return List.of();
    }
    List<Part> plain = exercise.partsIn(condition);
    List<Part> own = parts(condition);
    List<Part> others = other.parts(condition);
    var replaced = new ArrayList<Edit>();
    for (int k = 0; k < own.size(); k++) {
      if (!others.get(k).equals(own.get(k)) || !others.get(k).equals(plain.get(k))) {
        replaced.add(new Edit.Instead(others.get(k)));
      }
    }
    return replaced;
  }

  /** Whether the two are the same circuit: the same leads together, nothing else otherwise. */
  public boolean same(Assembly other) {
    return changes.equals(other.changes)
        && edits.equals(other.edits)
        && takenFor.equals(other.takenFor)
        && together().equals(other.together());
  }

  /** The first lead on the metal of each lead. */
  private Map<Pin, Pin> together() {
    DisjointSets metal = metal();
    Map<Integer, Pin> first = new LinkedHashMap<>();
    Map<Pin, Pin> together = new LinkedHashMap<>();
    for (Pin pin : exercise.pins()) {
      int root = metal.find(netlist.net(pin));
      first.putIfAbsent(root, pin);
      together.put(pin, first.getOrDefault(root, pin));
    }
    return together;
  }

  /** Nets by number, those that twins join in one; which of two twins takes a current is told. */
  private DisjointSets metal() {
    var metal = new DisjointSets(netlist.nets().size());
    for (Part part : exercise.parts()) {
      for (List<String> twins : part.kind().twins(part.fields())) {
        int own = netlist.net(part.pin(twins.get(0)));
        for (String twin : metered(part) ? List.<String>of() : twins) {
          metal.union(own, netlist.net(part.pin(twin)));
        }
      }
    }
    return metal;
  }

  /** Whether the exercise asks for a current into the part. */
  private boolean metered(Part part) {
    return exercise.readings().stream()
        .anyMatch(
            reading ->
                reading.measure() instanceof Measure.Amps amps
                    && amps.pin().ref().equals(part.ref()));
  }

  /** A number of a part as it really is (SI), conditions left aside. */
  public double value(String ref, String field) {
    double value = exercise.part(ref).orElseThrow().number(field);
    for (var change : changes) {
      if (change.ref().equals(ref)
          && change.field().equals(field)
          && change.value() instanceof Double changed) {
        value = changed;
      }
    }
    return value;
  }

  /** The parts as they stand in a condition, with what is really otherwise about them. */
  List<Part> parts(Condition condition) {
    var parts = new ArrayList<Part>();
    for (Part part : exercise.partsIn(condition)) {
      Part really = part;
      for (var change : changes) {
        if (change.ref().equals(part.ref())) {
          really = really.with(change.field(), change.value());
        }
      }
      parts.add(really);
    }
    return parts;
  }

  Circuit circuit(Condition condition) {
    return bare(condition).with(edits);
  }

  /** The circuit without the edits. */
  Circuit bare(Condition condition) {
    return Circuit.of(parts(condition), netlist, condition.temperature().orElse(25));
  }

  /** The lead that stands where the record has this one. */
  Pin really(Pin lead) {
    return takenFor.getOrDefault(lead, lead);
  }

  /** The point a probe touches; a hole that nothing is in is a net beyond the last. */
  Point point(Probe probe) {
    if (probe instanceof Probe.AtPin at) {
      return new Point.AtPin(really(at.pin()));
    }
    int net = places.netAt(((Probe.AtHole) probe).hole());
    return new Point.AtNet(net < 0 ? netlist.nets().size() : net);
  }

  /** Net that a lead ends on, moves included. */
  int net(Pin lead) {
    int net = netlist.net(lead);
    for (Edit edit : edits) {
      if (edit instanceof Edit.Moved moved && moved.pin().equals(lead)) {
        net = moved.net();
      }
    }
    return net;
  }

  /** Resistance between a lead and its strip (Ω); 0 where the contact is good. */
  double contact(Pin lead) {
    double ohms = 0;
    for (Edit edit : edits) {
      if (edit instanceof Edit.Contact contact && contact.pin().equals(lead)) {
        ohms += contact.ohms();
      }
    }
    return ohms;
  }

  private static <T> List<T> joined(List<T> some, List<T> more) {
    var all = new ArrayList<T>(some);
    all.addAll(more);
    return List.copyOf(all);
  }
}
