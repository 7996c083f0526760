package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;
import org.holewise.engine.part.Pin;

/** The exercise as the page shows it: parts, readings, and what joins what. */
public record ExerciseSheet(
    String slug,
    String title,
    String aim,
    String board,
    List<PartRow> parts,
    List<ReadingRow> readings,
    List<NetRow> nets) {

  /** {@code pins} in the order in which their holes are typed. */
  public record PartRow(String ref, String kind, String value, String pins) {}

  /** {@code when} is empty where there is but one condition. */
  public record ReadingRow(String id, String label, String how, String when) {}

  public record NetRow(String name, String pins) {}

  public static ExerciseSheet of(Exercise exercise) {
    return new ExerciseSheet(
        exercise.slug(),
        exercise.title(),
        exercise.aim(),
        exercise.board().name(),
        exercise.parts().stream().map(ExerciseSheet::part).toList(),
        readings(exercise),
        exercise.nets().stream().map(ExerciseSheet::net).toList());
  }

  private static PartRow part(Part part) {
    var pins = part.pins().stream().map(pin -> Signs.shown(pin.name())).toList();
    return new PartRow(part.ref(), part.kind().name(), PartValue.of(part), String.join(" ", pins));
  }

  private static List<ReadingRow> readings(Exercise exercise) {
    var texts = new Texts(Messages.english(), exercise, Optional.empty(), true);
    boolean choice = exercise.conditions().size() > 1;
    return exercise.readings().stream()
        .map(r -> new ReadingRow(r.id(), r.label(), texts.how(r.measure()), choice ? r.when() : ""))
        .toList();
  }

  private static NetRow net(Net net) {
    List<Pin> pins = net.pins();
    var all = pins.stream().map(Signs::shown).toList();
    String last = all.isEmpty() ? "" : all.get(all.size() - 1);
    String first = String.join(", ", all.subList(0, Math.max(0, all.size() - 1)));
    return new NetRow(
        net.name(), first.isEmpty() ? last : Messages.english().say("list.and", first, last));
  }
}
