package org.holewise.school.handin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.KeptMark.Change;
import org.holewise.school.sheet.KeptMark.Difference;
import org.holewise.school.sheet.KeptMark.Told;

/**
 * How near a mark came to the cause that was found. Immutable.
 *
 * @param pointed at which position the mark has the cause's place, from 1: what the wiring shows
 *     and what would mend it as well, then suspects; 0 where it has not; empty where the cause
 *     names no place
 * @param said the probability of its first suspect
 * @param wasSo whether that was the place; empty where {@code pointed} is
 */
record Foretold(Optional<Integer> pointed, Optional<Double> said, Optional<Boolean> wasSo) {

  static final Foretold NOTHING =
      new Foretold(Optional.empty(), Optional.empty(), Optional.empty());

  /** Kinds of faults of a lead: a teacher may name the part alone. */
  private static final Set<String> OF_LEADS =
      Set.of("open-contact", "poor-contact", "wrong-hole", "column-off", "wrong-strip");

  private static final Set<String> LINKS_TO_ADD = Set.of("link-missing", "gap-open");

  static Foretold of(KeptMark mark, Cause cause) {
    boolean nothing = cause.isNothing();
    if (!nothing && cause.place().isEmpty() && !LINKS_TO_ADD.contains(cause.kind())) {
      return NOTHING;
    }
    var pointed = new ArrayList<Boolean>();
    for (Difference difference : mark.differences()) {
      pointed.add(isAt(difference.change(), cause));
      difference.or().forEach(change -> pointed.add(isAt(change, cause)));
    }
    for (Told<Suspect> told : mark.suspects()) {
      if (pointed.isEmpty() || nothing || !isNone(told.what())) {
        pointed.add(isAt(told.what(), cause));
      }
    }
    var first = mark.suspects().stream().findFirst().map(Told::what);
    boolean fits = nothing || Taught.onRecord(cause.kind());
    return new Foretold(
        Optional.of(pointed.indexOf(true) + 1),
        first.map(Suspect::probability),
        first.map(suspect -> fits ? isNone(suspect) : isAt(suspect, cause)));
  }

  private static boolean isNone(Suspect suspect) {
    return suspect.likeliest().kind().equals(Taught.NONE);
  }

  private static boolean isAt(Change change, Cause cause) {
    if (LINKS_TO_ADD.contains(cause.kind())) {
      return change.ref().isEmpty() && change.link().isEmpty();
    }
    String place =
        change
            .ref()
            .map(ref -> change.pin().map(pin -> ref + "." + pin).orElse(ref))
            .or(() -> change.link().map(link -> Taught.OF_LINK + (link + 1)))
            .orElse("");
    return isAt(place, change.holes(), cause);
  }

  private static boolean isAt(Suspect suspect, Cause cause) {
    if (isNone(suspect) || cause.isNothing()) {
      return isNone(suspect) && cause.isNothing();
    }
    var holes = suspect.kinds().stream().flatMap(guess -> guess.holes().stream()).toList();
    return isAt(Fault.of(suspect).place(), holes, cause);
  }

  private static boolean isAt(String place, List<Hole> holes, Cause cause) {
    String found = cause.place();
    return place.equalsIgnoreCase(found)
        || (OF_LEADS.contains(cause.kind()) && isLeadOf(place, found))
        || (isHole(found) && Hole.read(found).filter(holes::contains).isPresent());
  }

  private static boolean isLeadOf(String place, String part) {
    return place.regionMatches(true, 0, part + ".", 0, part.length() + 1);
  }

  // D1 is a part, d1 a hole.
  private static boolean isHole(String place) {
    return !place.isEmpty() && !Character.isUpperCase(place.charAt(0));
  }
}
