package org.holewise.engine.wiring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A repair that alone would do, with every strip that it may use. Strips are keys, the wanted net
 * that each belongs to the value (-1: none).
 */
sealed interface Choice {

  /** What tells choices apart that are the same but for their strips. */
  Object key();

  /** The two taken as one, this one's strips first. */
  Choice or(Choice same);

  /**
   * A lead moved.
   *
   * @param net its wanted net, -1 where it should touch nothing
   * @param joins net of its strip now, -1 for none
   */
  record Lead(int pin, int net, int joins, Map<Integer, Integer> to) implements Choice {
    @Override
    public Object key() {
      return "lead " + pin;
    }

    @Override
    public Choice or(Choice same) {
      return new Lead(pin, net, joins, both(to, ((Lead) same).to));
    }
  }

  /** An end of a link moved; {@code joins} is the net of its strip now. */
  record End(int link, int end, int net, int joins, Map<Integer, Integer> to) implements Choice {
    @Override
    public Object key() {
      return "end " + link + " " + end;
    }

    @Override
    public Choice or(Choice same) {
      return new End(link, end, net, joins, both(to, ((End) same).to));
    }
  }

  /** A link added. */
  record Add(int net, Map<Integer, Integer> from, Map<Integer, Integer> to) implements Choice {
    private boolean joins(int one, int other) {
      return from.containsKey(one) && to.containsKey(other);
    }

    @Override
    public Object key() {
      return "add " + from.keySet() + to.keySet();
    }

    @Override
    public Choice or(Choice same) {
      return this;
    }
  }

  /** A link removed that joins two nets. */
  record Remove(int link, int joins, int and) implements Choice {
    @Override
    public Object key() {
      return "remove " + link;
    }

    @Override
    public Choice or(Choice same) {
      return this;
    }
  }

  /** A missing part placed. */
  record Place(int part) implements Choice {
    @Override
    public Object key() {
      return "place " + part;
    }

    @Override
    public Choice or(Choice same) {
      return this;
    }
  }

  /** Whether it is the same act as a repair, to some strip or other. */
  default boolean does(Fix fix) {
    if (this instanceof Lead lead) {
      return fix instanceof Fix.Lead moved && moved.pin() == lead.pin;
    }
    if (this instanceof End end) {
      return fix instanceof Fix.End moved && moved.link() == end.link && moved.end() == end.end;
    }
    if (this instanceof Add add) {
      return fix instanceof Fix.Add added
          && (add.joins(added.from(), added.to()) || add.joins(added.to(), added.from()));
    }
    return fixes().contains(fix);
  }

  /** A repair as a choice of its own strips only. */
  static Choice of(Fix fix, Terminals t) {
    if (fix instanceof Fix.Lead lead) {
      int net = t.net[lead.pin()];
      return new Lead(lead.pin(), net, -1, Map.of(lead.strip(), net));
    }
    if (fix instanceof Fix.End end) {
      return new End(end.link(), end.end(), -1, -1, Map.of(end.strip(), -1));
    }
    if (fix instanceof Fix.Add add) {
      return new Add(-1, Map.of(add.from(), -1), Map.of(add.to(), -1));
    }
    return fix instanceof Fix.Remove gone
        ? new Remove(gone.link(), -1, -1)
        : new Place(((Fix.Place) fix).part());
  }

  /**
   * The choice with each of its strips; for a link added, each of the one side and of the other.
   */
  default List<Fix> fixes() {
    if (this instanceof Lead lead) {
      return lead.to.keySet().stream().<Fix>map(to -> new Fix.Lead(lead.pin, to)).toList();
    }
    if (this instanceof End end) {
      return end.to.keySet().stream().<Fix>map(to -> new Fix.End(end.link, end.end, to)).toList();
    }
    if (this instanceof Add add) {
      return add.from.keySet().stream()
          .flatMap(from -> add.to.keySet().stream().<Fix>map(to -> new Fix.Add(from, to)))
          .toList();
    }
    return List.of(
        this instanceof Remove gone
            ? new Fix.Remove(gone.link)
            : new Fix.Place(((Place) this).part));
  }

  private static Map<Integer, Integer> both(
      Map<Integer, Integer> first, Map<Integer, Integer> then) {
    var both = new LinkedHashMap<>(first);
    then.forEach(both::putIfAbsent);
    return both;
  }
}
