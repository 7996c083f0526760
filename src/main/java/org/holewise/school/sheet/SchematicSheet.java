package org.holewise.school.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;
import org.holewise.engine.part.Pin;

/**
 * A schematic as pages show it: its drawing, and the same as lists. Immutable.
 *
 * @param picture empty where the circuit cannot be drawn clearly
 */
public record SchematicSheet(
    String slug,
    String title,
    Optional<SchematicPicture> picture,
    List<PartRow> parts,
    List<NetRow> nets,
    List<Probing> probings) {

  /**
   * A part and where its leads are.
   *
   * @param pins as pages name them to scripts, {@code R1.1}
   * @param unused the leads that are on no net
   */
  public record PartRow(
      String ref, String kind, String value, String pins, List<Lead> leads, String unused) {}

  public record Lead(String pin, String net) {}

  /** {@code joined}: its pins as they are printed. */
  public record NetRow(String name, String pins, List<String> joined) {}

  static SchematicSheet of(Exercise exercise, Drawn drawn) {
    var netOf = new LinkedHashMap<Pin, String>();
    exercise.nets().forEach(net -> net.pins().forEach(pin -> netOf.put(pin, net.name())));
    return new SchematicSheet(
        exercise.slug(),
        exercise.title(),
        drawn instanceof Drawn.Done done
            ? Optional.of(SchematicPicture.of(done.drawing(), exercise))
            : Optional.empty(),
        exercise.parts().stream().map(part -> part(part, netOf)).toList(),
        exercise.nets().stream().map(SchematicSheet::net).toList(),
        Probing.all(exercise));
  }

  private static PartRow part(Part part, Map<Pin, String> netOf) {
    return new PartRow(
        part.ref(),
        part.kind().name(),
        PartValue.of(part),
        written(part.pins()),
        part.pins().stream()
            .filter(netOf::containsKey)
            .map(pin -> new Lead(Signs.shown(pin.name()), netOf.getOrDefault(pin, "")))
            .toList(),
        part.pins().stream()
            .filter(pin -> !netOf.containsKey(pin))
            .map(pin -> Signs.shown(pin.name()))
            .collect(Collectors.joining(", ")));
  }

  private static NetRow net(Net net) {
    return new NetRow(
        net.name(), written(net.pins()), net.pins().stream().map(Signs::shown).toList());
  }

  private static String written(List<Pin> pins) {
    return pins.stream().map(Pin::toString).collect(Collectors.joining(" "));
  }
}
