package org.holewise.document.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** Prints a record as lines. */
final class LineWriter {
  private static final Set<String> KEYWORDS = Set.of("link", "extra", "board", "meter", "reading");

  private final Exercise exercise;
  private final List<String> lines = new ArrayList<>();

  LineWriter(Exercise exercise) {
    this.exercise = exercise;
  }

  String write(BenchRecord record) {
    if (!record.meter().equals(exercise.meter())) {
      lines.add("meter " + record.meter());
    }
    record.build().ifPresent(this::build);
    record.readings().forEach(this::reading);
    for (int i = 0; i < record.extra().size(); i++) {
      extra(record.extra().get(i), "x" + (i + 1));
    }
    return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
  }

  private void build(Build build) {
    if (!build.board().name().equals(exercise.board().name())) {
      lines.add("board " + build.board().name());
    }
    build.placed().forEach(placed -> lines.add(placing(placed)));
    build.links().forEach(link -> lines.add("link " + link.from() + " " + link.to()));
  }

  private String placing(Placed placed) {
    List<String> pins =
        exercise.part(placed.ref()).map(Part::pins).orElse(List.of()).stream()
            .map(Pin::name)
            .toList();
    var words = new ArrayList<String>();
    words.add(placed.ref());
    boolean whole = placed.holes().keySet().equals(Set.copyOf(pins));
    if (placed.pin1().isPresent()) {
      words.add(PlacingReader.FIRST_PIN + "=" + placed.pin1().get());
    } else if (whole) {
      pins.forEach(pin -> words.add(hole(placed.holes(), pin)));
    } else {
      placed.holes().forEach((pin, hole) -> words.add(pin + "=" + hole));
    }
    placed.marked().ifPresent(marked -> words.add("marked " + oneLine(marked)));
    return String.join(" ", words);
  }

  private static String hole(Map<String, Hole> holes, String pin) {
    return String.valueOf(holes.get(pin));
  }

  private void reading(String id, Written written) {
    boolean plain =
        !KEYWORDS.contains(id.toLowerCase(java.util.Locale.ROOT)) && exercise.part(id).isEmpty();
    String text =
        exercise.readings().stream()
            .filter(reading -> reading.id().equals(id))
            .map(Reading::measure)
            .findFirst()
            .map(measure -> text(written, measure))
            .orElseGet(() -> oneLine(written.text()));
    lines.add(((plain ? "" : "reading ") + id + " " + text).strip());
  }

  private void extra(Extra extra, String usual) {
    String id = extra.id().equals(usual) ? "" : extra.id() + " ";
    String measure = Measures.written(extra.measure());
    String text = text(extra.value(), extra.measure());
    boolean said =
        extra.when().equals(exercise.conditions().get(0).name()) && !text.contains("when");
    String when = (said ? "" : " when " + extra.when()) + Measures.written(extra.occasion());
    lines.add(("extra " + id + measure + " " + text).strip() + when);
  }

  private static String text(Written written, Measure measure) {
    String text = oneLine(written.text());
    return written.si().isPresent() ? text + " " + Measures.unit(measure) : text;
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
