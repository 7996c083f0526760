package org.holewise.engine.wiring;

import java.util.LinkedHashMap;
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

  private static Map<Integer, Integer> both(
      Map<Integer, Integer> first, Map<Integer, Integer> then) {
    var both = new LinkedHashMap<>(first);
    then.forEach(both::putIfAbsent);
    return both;
  }
}
