package org.holewise.school.handin;

import java.util.Map;
import java.util.Optional;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Repair;
import org.holewise.engine.wiring.Repair.Slip;

/**
 * The first thing that a mark points to: the first difference of the wiring, else the likeliest
 * suspect, else the first reading that does not fit. Two hand-ins with the same fault have not got
 * further. Immutable.
 *
 * @param kind of difference, such as {@code column-off}, or of suspect, such as {@code
 *     open-contact}
 * @param place where, such as {@code R1.2}; may be empty
 */
public record Fault(String kind, String place) {

  /** The layout as entered is doubted, not the bench. */
  public static final String DOUBTFUL = "layout-doubtful";

  /** As much as is kept of a place. */
  static final int LONGEST_PLACE = 100;

  private static final Map<Slip, String> SLIPS =
      Map.of(
          Slip.SAME_STRIP, "same-strip",
          Slip.COLUMN_OFF, "column-off",
          Slip.ACROSS_GROOVE, "across-groove",
          Slip.OTHER_RAIL, "other-rail",
          Slip.PAST_GAP, "past-gap",
          Slip.ELSEWHERE, "wrong-strip");

  public Fault {
    place = place.substring(0, Math.min(place.length(), LONGEST_PLACE));
  }

  /** What a mark points to first; empty where it points to nothing. */
  public static Optional<Fault> of(Mark mark) {
    if (mark.marks().held()) {
      return Optional.of(new Fault(DOUBTFUL, ""));
    }
    return mark.wiring().differences().stream()
        .findFirst()
        .map(difference -> of(difference.repair()))
        .or(() -> suspect(mark))
        .or(() -> reading(mark));
  }

  /** What a suspect most likely is. */
  public static Fault of(Suspect suspect) {
    return new Fault(suspect.likeliest().kind(), place(suspect.place()));
  }

  private static Optional<Fault> suspect(Mark mark) {
    return mark.diagnosis().suspects().stream()
        .findFirst()
        .map(Fault::of)
        .filter(fault -> !fault.kind().equals("none"));
  }

  private static Optional<Fault> reading(Mark mark) {
    return mark.readings().stream()
        .filter(read -> !read.verdict().earns() && read.verdict() != Verdict.MISSING)
        .findFirst()
        .map(read -> new Fault("reading-off", read.reading().id()));
  }

  private static Fault of(Repair repair) {
    if (repair instanceof Repair.MoveLead move) {
      String kind = move.from().isEmpty() ? "no-hole" : slip(move.slip());
      return new Fault(kind, move.pin().toString());
    }
    if (repair instanceof Repair.MoveLinkEnd move) {
      return new Fault(slip(move.slip()), "link " + (move.link() + 1));
    }
    if (repair instanceof Repair.AddLink add) {
      return new Fault(add.acrossGap() ? "gap-open" : "link-missing", add.net());
    }
    if (repair instanceof Repair.RemoveLink remove) {
      return new Fault("link-too-many", remove.where().from() + " " + remove.where().to());
    }
    return new Fault("part-missing", ((Repair.PlacePart) repair).ref());
  }

  private static String slip(Slip slip) {
    return SLIPS.getOrDefault(slip, "wrong-strip");
  }

  private static String place(Place place) {
    if (place instanceof Place.OfLead lead) {
      return lead.pin().toString();
    }
    if (place instanceof Place.OfLink link) {
      return "link " + (link.link() + 1);
    }
    if (place instanceof Place.OfStrips strips) {
      return strips.one() + " " + strips.other();
    }
    if (place instanceof Place.OfRail rail) {
      return rail.track();
    }
    return ref(place);
  }

  private static String ref(Place place) {
    if (place instanceof Place.OfPart part) {
      return part.ref();
    }
    if (place instanceof Place.OfSupply supply) {
      return supply.ref();
    }
    if (place instanceof Place.OfParts parts) {
      return parts.one() + " " + parts.other();
    }
    if (place instanceof Place.OfReadings readings) {
      return readings.one() + " " + readings.other();
    }
    return place instanceof Place.OfReading reading ? reading.id() : "";
  }
}
