package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.holewise.document.picture.BoardPicture;
import org.holewise.document.picture.BoardPicture.Dot;
import org.holewise.document.picture.BoardPicture.Ring;
import org.holewise.document.picture.Highlight;
import org.holewise.document.picture.Section;
import org.holewise.document.picture.Spot;
import org.holewise.document.picture.View;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;

/**
 * The board on the page: its drawing in both views, and the same in words.
 *
 * @param size whether it fits the page or may be too wide for it: {@code fits}, {@code wide}
 * @param shown which columns, a sentence for each board
 * @param looked the holes with a ring
 */
public record BenchView(
    BoardPicture along,
    BoardPicture down,
    String size,
    String model,
    List<Said> shown,
    List<Entry> entries,
    List<String> missing,
    List<Hole> looked) {

  /** Beyond this a drawing would become too small if it were fitted to the page (px). */
  private static final double WIDE = 900;

  /** A part or link in words; {@code kind} is empty for a link. */
  public record Entry(String ref, String kind, String value, List<Seat> seats) {}

  public record Seat(String pin, String hole) {}

  /**
   * A hole that can be tapped.
   *
   * @param x its place among the holes from the left, {@code y} from above, both from 0
   */
  public record Tap(Hole hole, Spot at, int x, int y, boolean used) {}

  /** The used columns with a margin. */
  public static BenchView of(Exercise exercise, Optional<Build> typed, Highlight highlight) {
    return of(exercise, typed, highlight, false);
  }

  /** Every column, for a board that is built on by tapping its holes. */
  public static BenchView whole(Exercise exercise, Optional<Build> typed, Highlight highlight) {
    return of(exercise, typed, highlight, true);
  }

  private static BenchView of(
      Exercise exercise, Optional<Build> typed, Highlight highlight, boolean whole) {
    Build build = typed.orElseGet(() -> new Build(exercise.board(), List.of(), List.of()));
    List<Part> parts = exercise.parts();
    var along = BoardPicture.of(build, parts, highlight, View.ALONG, whole);
    var down = BoardPicture.of(build, parts, highlight, View.DOWN, whole);
    var placed = build.placed().stream().map(Placed::ref).toList();
    return new BenchView(
        along,
        down,
        along.frame().width() > WIDE ? "wide" : "fits",
        build.board().name(),
        shown(build.board().name(), along.sections()),
        entries(exercise, build),
        parts.stream().map(Part::ref).filter(ref -> !placed.contains(ref)).toList(),
        along.rings().stream().map(Ring::hole).toList());
  }

  public boolean outlined() {
    return !along.patches().isEmpty();
  }

  public boolean dashed() {
    return !along.outlines().isEmpty();
  }

  public List<Tap> alongTaps() {
    return taps(along.holes());
  }

  public List<Tap> downTaps() {
    return taps(down.holes());
  }

  /** Row by row, as one reads. */
  private static List<Tap> taps(List<Dot> holes) {
    var xs = new TreeSet<Double>();
    var ys = new TreeSet<Double>();
    holes.forEach(
        dot -> {
          xs.add(dot.at().x());
          ys.add(dot.at().y());
        });
    return holes.stream()
        .map(
            dot ->
                new Tap(
                    dot.hole(),
                    dot.at(),
                    xs.headSet(dot.at().x()).size(),
                    ys.headSet(dot.at().y()).size(),
                    dot.used()))
        .sorted(Comparator.comparingInt(Tap::y).thenComparingInt(Tap::x))
        .toList();
  }

  private static List<Said> shown(String model, List<Section> sections) {
    var boards = sections.stream().map(Section::board).distinct().toList();
    String key = boards.size() == 1 ? "sheet.board.columns" : "sheet.board.columns.joined";
    return boards.stream()
        .map(board -> sections.stream().filter(s -> s.board() == board).toList())
        .map(of -> Said.of(key, model, ranges(of), of.get(0).of(), of.get(0).board()))
        .toList();
  }

  private static String ranges(List<Section> sections) {
    return sections.stream()
        .map(section -> section.first() + "–" + section.last())
        .collect(Collectors.joining(", "));
  }

  private static List<Entry> entries(Exercise exercise, Build build) {
    var entries = new ArrayList<Entry>();
    build.placed().forEach(placed -> entries.add(entry(exercise, placed)));
    for (int i = 0; i < build.links().size(); i++) {
      Link link = build.links().get(i);
      var ends = List.of(new Seat("", link.from().toString()), new Seat("", link.to().toString()));
      entries.add(new Entry("L" + (i + 1), "", "", ends));
    }
    return entries;
  }

  private static Entry entry(Exercise exercise, Placed placed) {
    var part = exercise.part(placed.ref());
    var seats =
        placed.holes().entrySet().stream()
            .map(seat -> new Seat(Signs.shown(seat.getKey()), seat.getValue().toString()))
            .toList();
    return new Entry(
        placed.ref(),
        part.map(p -> p.kind().name()).orElse(""),
        part.map(PartValue::of).orElse(""),
        seats);
  }
}
