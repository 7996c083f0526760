package org.holewise.school.handin;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import org.holewise.engine.diagnosis.Priors.Family;

/**
 * What a known cause teaches the fault finder, which looks for what the record does not show.
 *
 * <p>A slip that the record shows, such as {@code column-off}, counts as {@link Family#NONE}: what
 * was entered and measured fits, and nothing is hidden.
 */
public final class Taught {

  /** Nothing is wrong. */
  public static final String NONE = "none";

  /** A link's contacts are counted apart from a part's. */
  static final String OF_LINK = "link ";

  private static final Map<String, Family> FAMILIES =
      Map.ofEntries(
          entry(NONE, Family.NONE),
          entry("same-strip", Family.NONE),
          entry("column-off", Family.NONE),
          entry("across-groove", Family.NONE),
          entry("other-rail", Family.NONE),
          entry("past-gap", Family.NONE),
          entry("wrong-strip", Family.NONE),
          entry("no-hole", Family.NONE),
          entry("link-missing", Family.NONE),
          entry("gap-open", Family.NONE),
          entry("link-too-many", Family.NONE),
          entry("part-missing", Family.NONE),
          entry("marked-otherwise", Family.NONE),
          entry("open-contact", Family.LEAD_CONTACT),
          entry("poor-contact", Family.LEAD_CONTACT),
          entry("bounce", Family.LEAD_CONTACT),
          entry("wrong-hole", Family.WRONG_HOLE),
          entry("layout-doubtful", Family.WRONG_HOLE),
          entry("touching", Family.TOUCHING),
          entry("leftover", Family.LEFTOVER),
          entry("rail-gap", Family.RAIL_GAP),
          entry("wrong-value", Family.WRONG_VALUE),
          entry("swapped-parts", Family.EXCHANGED),
          entry("reversed", Family.REVERSED),
          entry("swapped-pins", Family.PINS),
          entry("turned-round", Family.PINS),
          entry("shifted", Family.PINS),
          entry("unpowered", Family.PINS),
          entry("dead-part", Family.DEAD_PART),
          entry("supply-off", Family.SUPPLY_OFF),
          entry("supply-low", Family.SUPPLY_LOW),
          entry("supply-limit", Family.SUPPLY_LOW),
          entry("supply-reversed", Family.SUPPLY_REVERSED),
          entry("reading-off", Family.METER),
          entry("meter-leads", Family.METER),
          entry("meter-scale", Family.METER),
          entry("meter-place", Family.METER),
          entry("meter-fuse", Family.METER),
          entry("meter-mode", Family.METER),
          entry("readings-exchanged", Family.READINGS));

  private Taught() {}

  /** Of a cause of that kind; empty where it teaches nothing. */
  public static Optional<Family> family(String kind, boolean ofLink) {
    return Optional.ofNullable(FAMILIES.get(kind))
        .map(family -> ofLink && family == Family.LEAD_CONTACT ? Family.LINK_CONTACT : family);
  }

  /** Whether the record shows a fault of that kind. */
  public static boolean onRecord(String kind) {
    return FAMILIES.get(kind) == Family.NONE && !kind.equals(NONE);
  }
}
