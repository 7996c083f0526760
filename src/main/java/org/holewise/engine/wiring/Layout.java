package org.holewise.engine.wiring;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Placed;
import org.holewise.engine.board.Seat;
import org.holewise.engine.part.Part;

/**
 * A build in numbers: the strip of each pin and of each end of a link (-1: in none), and what some
 * repairs have made of it. What a repair has set is fixed: it is not repaired again. Immutable, but
 * for arrays that nobody writes to.
 *
 * @param strips number of strips of the boards in use
 * @param pin strip of each pin
 * @param end strip of both ends of each link; links of the record first, then those added
 * @param parts what there is of each part
 * @param fixedPin pins that a repair has set
 * @param fixedEnd ends that a repair has set
 */
record Layout(
    int strips, int[] pin, int[] end, Presence[] parts, boolean[] fixedPin, boolean[] fixedEnd) {

  /** What there is of a part. */
  enum Presence {
    /** Placed, with a hole for one lead at least. */
    PLACED,
    MISSING,
    /** Placed by a repair, every lead where it belongs, wherever that is. */
    GIVEN
  }

  /**
   * Pins of chips that sit across the groove are fixed: they move with their chip or not at all.
   */
  static Layout of(Terminals t, Build build) {
    Layout free = free(t, build);
    for (int i = 0; i < free.parts.length; i++) {
      Part part = t.parts.get(i);
      boolean chip =
          build
              .placed(part.ref())
              .flatMap(placed -> placed.seat(part))
              .filter(Seat::acrossGroove)
              .isPresent();
      for (int j = t.firstPin[i]; chip && j < t.firstPin[i + 1]; j++) {
        free.fixedPin[j] = true;
      }
    }
    return free;
  }

  /** The same with every pin free to be moved. */
  static Layout free(Terminals t, Build build) {
    var board = build.board();
    int[] pin = new int[t.pins.size()];
    var parts = new Presence[t.parts.size()];
    Arrays.fill(pin, -1);
    for (int i = 0; i < parts.length; i++) {
      var placed = build.placed(t.parts.get(i).ref());
      parts[i] = Presence.MISSING;
      for (int j = t.firstPin[i]; j < t.firstPin[i + 1]; j++) {
        String name = t.pins.get(j).name();
        var hole = placed.flatMap((Placed part) -> part.hole(name));
        if (hole.isPresent()) {
          parts[i] = Presence.PLACED;
          pin[j] = board.stripOrNone(hole.get());
        }
      }
    }
    int[] end =
        IntStream.range(0, 2 * build.links().size())
            .map(i -> board.stripOrNone(build.links().get(i / 2).end(i % 2)))
            .toArray();
    int boards = 1;
    for (int strip : pin) {
      boards = Math.max(boards, strip < 0 ? 1 : board.board(strip));
    }
    for (int strip : end) {
      boards = Math.max(boards, strip < 0 ? 1 : board.board(strip));
    }
    return new Layout(
        boards * board.strips(), pin, end, parts, new boolean[pin.length], new boolean[end.length]);
  }

  int links() {
    return end.length / 2;
  }

  /** Numbers of the parts that are missing. */
  List<Integer> missing() {
    return IntStream.range(0, parts.length)
        .filter(part -> parts[part] == Presence.MISSING)
        .boxed()
        .toList();
  }

  Layout after(Fix fix) {
    if (fix instanceof Fix.Lead lead) {
      return new Layout(
          strips,
          set(pin, lead.pin(), lead.strip()),
          end,
          parts,
          fix(fixedPin, lead.pin()),
          fixedEnd);
    }
    if (fix instanceof Fix.End moved) {
      int i = 2 * moved.link() + moved.end();
      return new Layout(strips, pin, set(end, i, moved.strip()), parts, fixedPin, fix(fixedEnd, i));
    }
    if (fix instanceof Fix.Add add) {
      return added(add);
    }
    if (fix instanceof Fix.Remove gone) {
      int i = 2 * gone.link();
      return new Layout(
          strips,
          pin,
          set(set(end, i, -1), i + 1, -1),
          parts,
          fixedPin,
          fix(fix(fixedEnd, i), i + 1));
    }
    var placed = parts.clone();
    placed[((Fix.Place) fix).part()] = Presence.GIVEN;
    return new Layout(strips, pin, end, placed, fixedPin, fixedEnd);
  }

  private Layout added(Fix.Add add) {
    int n = end.length;
    int[] ends = Arrays.copyOf(end, n + 2);
    ends[n] = add.from();
    ends[n + 1] = add.to();
    boolean[] fixed = Arrays.copyOf(fixedEnd, n + 2);
    fixed[n] = true;
    fixed[n + 1] = true;
    return new Layout(strips, pin, ends, parts, fixedPin, fixed);
  }

  private static int[] set(int[] array, int i, int value) {
    int[] copy = array.clone();
    copy[i] = value;
    return copy;
  }

  private static boolean[] fix(boolean[] array, int i) {
    boolean[] copy = array.clone();
    copy[i] = true;
    return copy;
  }
}
