package org.holewise.engine.diagnosis;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How often a build that is handed in is sound, and how the rest falls on families of faults. A
 * family that cannot occur in a build has no share and the others are rescaled; a family's share is
 * spread evenly over its places. Immutable.
 *
 * @param name kept with every mark made with it
 * @param sound probability that nothing is wrong
 * @param shares by family; they need not sum to one
 */
public record Priors(String name, double sound, Map<Family, Double> shares) {

  /**
   * As how many known causes the shipped table counts: as many as a class makes in a few lessons,
   * so that one lesson does not outweigh it and a school year does.
   */
  public static final double START_WEIGHT = 20;

  /** Faults that are counted together. */
  public enum Family {
    WRONG_HOLE,
    LEAD_CONTACT,
    LINK_CONTACT,
    WRONG_VALUE,
    /** Two parts that have traded places. */
    EXCHANGED,
    RAIL_GAP,
    REVERSED,
    SUPPLY_OFF,
    SUPPLY_LOW,
    SUPPLY_REVERSED,
    METER,
    /** Two readings, each written down for the other. */
    READINGS,
    PINS,
    TOUCHING,
    /** A wire that is not on the record. */
    LEFTOVER,
    DEAD_PART,
    /** Nothing wrong, which has a probability of its own. */
    NONE
  }

  public Priors {
    shares = Collections.unmodifiableMap(new EnumMap<>(shares));
  }

  /**
   * The shipped table. No published frequencies of faults by kind were found: these are judgement,
   * to be learnt from causes that teachers confirm.
   */
  public static Priors start() {
    Map<Family, Double> shares = new EnumMap<>(Family.class);
    shares.put(Family.WRONG_HOLE, 0.22);
    shares.put(Family.LEAD_CONTACT, 0.10);
    shares.put(Family.LINK_CONTACT, 0.10);
    shares.put(Family.WRONG_VALUE, 0.10);
    shares.put(Family.EXCHANGED, 0.04);
    shares.put(Family.RAIL_GAP, 0.08);
    shares.put(Family.REVERSED, 0.09);
    shares.put(Family.SUPPLY_OFF, 0.03);
    shares.put(Family.SUPPLY_LOW, 0.05);
    shares.put(Family.SUPPLY_REVERSED, 0.02);
    shares.put(Family.METER, 0.09);
    shares.put(Family.READINGS, 0.01);
    shares.put(Family.PINS, 0.05);
    shares.put(Family.TOUCHING, 0.027);
    shares.put(Family.LEFTOVER, 0.003);
    shares.put(Family.DEAD_PART, 0.03);
    return new Priors("start", 0.30, shares);
  }

  /**
   * The shipped table and known causes, counted together: the expectation of a Dirichlet
   * distribution that begins with {@link #START_WEIGHT} on the shipped shares.
   *
   * @param counts known causes by family, {@link Family#NONE} not among them
   * @param sound hand-ins of which it is known that nothing was wrong
   */
  public static Priors learnt(String name, Map<Family, Integer> counts, int sound) {
    if (sound < 0
        || counts.containsKey(Family.NONE)
        || counts.values().stream().anyMatch(n -> n < 0)) {
      throw new IllegalArgumentException("no counts: " + counts + ", " + sound);
    }
    Priors start = start();
    double all = start.shares.values().stream().mapToDouble(share -> share).sum();
    double weight = START_WEIGHT + sound + counts.values().stream().mapToInt(n -> n).sum();
    Map<Family, Double> shares = new EnumMap<>(Family.class);
    for (Family family : Family.values()) {
      double begun = START_WEIGHT * (1 - start.sound) * start.share(family) / all;
      double share = (begun + counts.getOrDefault(family, 0)) / weight;
      if (share > 0) {
        shares.put(family, share);
      }
    }
    return new Priors(name, (START_WEIGHT * start.sound + sound) / weight, shares);
  }

  /** How large a part of all faults a family is. */
  public double ofFaults(Family family) {
    return share(family) / shares.values().stream().mapToDouble(share -> share).sum();
  }

  double share(Family family) {
    return shares.getOrDefault(family, 0.0);
  }
}
