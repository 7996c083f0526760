package org.holewise.school.handin;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;

/**
 * One thing that a bench changed in its layout between two records.
 *
 * @param place the lead, part or link; of a new link its two holes
 * @param slip what sort of slip the old hole of what was moved looks like, as marks call it; {@code
 *     wrong-strip} where it looks like none
 */
record Alteration(Sort sort, String place, String slip) {

  private static final String ELSEWHERE = "wrong-strip";

  private Alteration(Sort sort, String place) {
    this(sort, place, ELSEWHERE);
  }

  /** What a hand does in one go. */
  enum Sort {
    LEAD_MOVED,
    /** A part of two leads turned round, or a chip put in anew. */
    PART_RESEATED,
    PART_PLACED,
    PART_MARKED,
    LINK_END_MOVED,
    LINK_ADDED,
    LINK_REMOVED,
    /** Something that is no single act. */
    OTHER
  }

  /** In the order of parts, then of links; empty where the layouts are the same. */
  static List<Alteration> between(Exercise exercise, Build before, Build after) {
    var all = new ArrayList<Alteration>();
    if (!before.board().name().equals(after.board().name())) {
      all.add(new Alteration(Sort.OTHER, ""));
    }
    Set<String> refs = new LinkedHashSet<>();
    before.placed().forEach(placed -> refs.add(placed.ref()));
    after.placed().forEach(placed -> refs.add(placed.ref()));
    for (String ref : refs) {
      all.addAll(ofPart(exercise.part(ref), ref, before.placed(ref), after.placed(ref)));
    }
    all.addAll(ofLinks(before.links(), after.links()));
    return all;
  }

  private static List<Alteration> ofPart(
      Optional<Part> part, String ref, Optional<Placed> before, Optional<Placed> after) {
    if (part.isEmpty() || after.isEmpty()) {
      return List.of(new Alteration(Sort.OTHER, ref));
    }
    if (before.isEmpty()) {
      return List.of(new Alteration(Sort.PART_PLACED, ref));
    }
    var all = new ArrayList<>(moved(part.get(), before.get(), after.get()));
    if (markedOtherwise(before.get(), after.get())) {
      all.add(new Alteration(Sort.PART_MARKED, ref));
    }
    return all;
  }

  private static List<Alteration> moved(Part part, Placed placedBefore, Placed placedAfter) {
    Placed before = placedBefore.seated(part);
    Placed after = placedAfter.seated(part);
    List<String> moved =
        part.pins().stream()
            .map(pin -> pin.name())
            .filter(pin -> !before.hole(pin).equals(after.hole(pin)))
            .toList();
    boolean chip = part.kind().footprint(part.fields()) instanceof Footprint.Dip;
    if (!moved.isEmpty() && (chip || isTurned(part, moved, before, after))) {
      return List.of(new Alteration(Sort.PART_RESEATED, part.ref()));
    }
    return moved.stream()
        .map(
            pin ->
                new Alteration(
                    Sort.LEAD_MOVED,
                    part.ref() + "." + pin,
                    slip(before.hole(pin), after.hole(pin))))
        .toList();
  }

  private static boolean isTurned(Part part, List<String> moved, Placed before, Placed after) {
    return part.pins().size() == 2
        && moved.size() == 2
        && before.hole(moved.get(0)).equals(after.hole(moved.get(1)))
        && before.hole(moved.get(1)).equals(after.hole(moved.get(0)));
  }

  /** What was not read before is not another value. */
  private static boolean markedOtherwise(Placed before, Placed after) {
    String was = before.marked().orElse("").strip();
    String is = after.marked().orElse("").strip();
    return !was.isEmpty() && !is.isEmpty() && !was.equalsIgnoreCase(is);
  }

  private static List<Alteration> ofLinks(List<Link> before, List<Link> after) {
    var gone = new ArrayList<Integer>();
    var come = new ArrayList<>(after);
    for (int i = 0; i < before.size(); i++) {
      if (!take(before.get(i), come)) {
        gone.add(i);
      }
    }
    if (gone.size() == 1 && come.size() == 1 && shareAnEnd(before.get(gone.get(0)), come.get(0))) {
      return List.of(endMoved(gone.get(0), before.get(gone.get(0)), come.get(0)));
    }
    var all = new ArrayList<Alteration>();
    gone.forEach(i -> all.add(new Alteration(Sort.LINK_REMOVED, Taught.OF_LINK + (i + 1))));
    come.forEach(link -> all.add(new Alteration(Sort.LINK_ADDED, link.from() + " " + link.to())));
    return all;
  }

  private static Alteration endMoved(int link, Link before, Link after) {
    Hole same = isEnd(before.from(), after) ? before.from() : before.to();
    return new Alteration(
        Sort.LINK_END_MOVED,
        Taught.OF_LINK + (link + 1),
        slip(Optional.of(other(before, same)), Optional.of(other(after, same))));
  }

  private static Hole other(Link link, Hole end) {
    return link.from().equals(end) ? link.to() : link.from();
  }

  private static String slip(Optional<Hole> from, Optional<Hole> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return from.isEmpty() ? "no-hole" : ELSEWHERE;
    }
    int columns = Math.abs(from.get().column() - to.get().column());
    String was = side(from.get());
    String is = side(to.get());
    if (isRail(from.get()) && isRail(to.get())) {
      return was.equals(is) ? "past-gap" : was.charAt(1) == is.charAt(1) ? "other-rail" : ELSEWHERE;
    }
    if (isRail(from.get()) || isRail(to.get())) {
      return ELSEWHERE;
    }
    return was.equals(is) && columns == 1
        ? "column-off"
        : !was.equals(is) && columns == 0 ? "across-groove" : ELSEWHERE;
  }

  private static boolean isRail(Hole hole) {
    return hole.track().length() > 1;
  }

  /** Of the groove; a rail is a side of its own. */
  private static String side(Hole hole) {
    return isRail(hole) ? hole.track() : hole.track().compareTo("e") <= 0 ? "near" : "far";
  }

  private static boolean take(Link link, List<Link> from) {
    return from.remove(link) || from.remove(new Link(link.to(), link.from()));
  }

  private static boolean shareAnEnd(Link one, Link other) {
    return isEnd(one.from(), other) || isEnd(one.to(), other);
  }

  private static boolean isEnd(Hole hole, Link link) {
    return hole.equals(link.from()) || hole.equals(link.to());
  }
}
