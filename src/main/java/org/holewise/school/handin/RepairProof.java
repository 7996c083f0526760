package org.holewise.school.handin;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.school.handin.Alteration.Sort;
import org.holewise.school.sheet.KeptMark;

/**
 * What a bench's repair proves of the hand-in before it. One change of the layout, after which all
 * is sound, proves that the fault was there; so does one reading taken anew where the layout stays
 * as it is, or two that were exchanged. With a new layout readings are taken anew as a matter of
 * course. Two changes prove nothing.
 *
 * <p>Readings that stay as they were tell that only the record was wrong: then the fault was not on
 * it. A pure function.
 */
final class RepairProof {

  /** A part on the board is not the one wanted, and its record says so. */
  static final String MARKED_OTHERWISE = "marked-otherwise";

  private static final Set<String> LINKS_TO_ADD = Set.of("link-missing", "gap-open");

  private final Exercise exercise;
  private final BenchRecord before;
  private final KeptMark mark;
  private final Fault pointed;
  private final List<String> retaken;

  private RepairProof(
      Exercise exercise, BenchRecord before, KeptMark mark, Fault pointed, List<String> retaken) {
    this.exercise = exercise;
    this.before = before;
    this.mark = mark;
    this.pointed = pointed;
    this.retaken = retaken;
  }

  /**
   * The cause of what {@code before} shows; empty where nothing is proven.
   *
   * @param mark of {@code before}, in which something is wrong
   * @param pointed what that points to first
   * @param after in which nothing is wrong
   */
  static Optional<Fault> of(
      Exercise exercise, BenchRecord before, KeptMark mark, Fault pointed, BenchRecord after) {
    if (before.build().isEmpty()
        || after.build().isEmpty()
        || !before.meter().equals(after.meter())) {
      return Optional.empty();
    }
    var proof = new RepairProof(exercise, before, mark, pointed, retaken(exercise, before, after));
    var changes = Alteration.between(exercise, before.build().get(), after.build().get());
    return switch (changes.size()) {
      case 0 -> proof.ofReadings(after);
      case 1 -> proof.ofLayout(changes.get(0));
      default -> Optional.empty();
    };
  }

  private static List<String> retaken(Exercise exercise, BenchRecord before, BenchRecord after) {
    return exercise.readings().stream()
        .map(Reading::id)
        .filter(id -> !text(before, id).equals(text(after, id)))
        .toList();
  }

  private static String text(BenchRecord record, String id) {
    return Optional.ofNullable(record.readings().get(id)).map(Written::text).orElse("").strip();
  }

  private Optional<Fault> ofLayout(Alteration change) {
    boolean shown = !mark.wiringMatches();
    return switch (change.sort()) {
      case LEAD_MOVED, LINK_END_MOVED ->
          shown
              ? Optional.of(recorded(change, "wrong-hole", change.slip()))
              : anew(change, "open-contact");
      case PART_RESEATED ->
          shown ? Optional.of(recorded(change, turned(change), change.slip())) : Optional.empty();
      case PART_PLACED ->
          shown ? Optional.of(recorded(change, "leftover", "part-missing")) : Optional.empty();
      case LINK_ADDED ->
          shown ? Optional.of(recorded(change, "leftover", "link-missing")) : Optional.empty();
      case LINK_REMOVED ->
          shown && !retaken.isEmpty()
              ? Optional.of(new Fault("link-too-many", change.place()))
              : Optional.empty();
      case PART_MARKED -> Optional.of(marked(change));
      case OTHER -> Optional.empty();
    };
  }

  /** The record was wrong and the bench right, or the other way about. */
  private Fault recorded(Alteration change, String hidden, String onRecord) {
    return retaken.isEmpty()
        ? new Fault(hidden, change.place())
        : new Fault(kindPointedTo(change).orElse(onRecord), change.place());
  }

  /** A lead beside its old place in the same strip makes a new contact and no other circuit. */
  private Optional<Fault> anew(Alteration change, String kind) {
    return retaken.isEmpty() ? Optional.empty() : Optional.of(new Fault(kind, change.place()));
  }

  private Optional<String> kindPointedTo(Alteration change) {
    boolean same =
        change.sort() == Sort.LINK_ADDED
            ? LINKS_TO_ADD.contains(pointed.kind())
            : pointed.place().equals(change.place());
    return Optional.of(pointed.kind()).filter(kind -> same && Taught.onRecord(kind));
  }

  private String turned(Alteration change) {
    boolean polar = exercise.part(change.place()).filter(part -> part.kind().polar()).isPresent();
    return polar ? "reversed" : "shifted";
  }

  private Fault marked(Alteration change) {
    boolean read =
        mark.findings().stream().anyMatch(told -> told.what().kind().equals(MARKED_OTHERWISE));
    return new Fault(read && !retaken.isEmpty() ? MARKED_OTHERWISE : "wrong-value", change.place());
  }

  private Optional<Fault> ofReadings(BenchRecord after) {
    if (retaken.size() == 1) {
      return ofReading(retaken.get(0));
    }
    return retaken.size() == 2 && exchanged(after)
        ? Optional.of(new Fault("readings-exchanged", String.join(" ", retaken)))
        : Optional.empty();
  }

  private boolean exchanged(BenchRecord after) {
    String one = retaken.get(0);
    String other = retaken.get(1);
    return text(before, one).equals(text(after, other))
        && text(before, other).equals(text(after, one));
  }

  // A reading that was not there before is no slip.
  private Optional<Fault> ofReading(String id) {
    boolean wasOff =
        mark.readings().stream()
            .anyMatch(
                read ->
                    read.id().equals(id) && read.measured().isPresent() && !read.verdict().earns());
    return wasOff ? Optional.of(new Fault(kindAt(id), id)) : Optional.empty();
  }

  private String kindAt(String id) {
    return mark.suspects().stream()
        .map(told -> told.what())
        .filter(suspect -> suspect.place().equals(new Place.OfReading(id)))
        .map(suspect -> suspect.likeliest().kind())
        .findFirst()
        .orElse("reading-off");
  }
}
