package org.holewise.engine.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.part.Part;

/**
 * What is impossible or odd about a build, whatever its circuit. Each finding's key, with what its
 * sentence names in this order:
 *
 * <ul>
 *   <li>{@code off-board} (who, hole, board model): the board has no such hole
 *   <li>{@code rail-gap} (who, hole): the column at which that rail is interrupted
 *   <li>{@code rail-side} (who, hole): a rail in parts, named without a column
 *   <li>{@code hole-taken} (who, hole, who is there already)
 *   <li>{@code same-strip} (ref, pin, pin, hole, hole): two leads of a part that the strip shorts
 *   <li>{@code part-twice} (ref): placed before; this placing is left out of account
 *   <li>{@code ref-unknown} (ref): the exercise has no such part; it is left out of account
 *   <li>{@code part-missing} (ref): never placed
 *   <li>{@code pin-unknown} (ref, pin): the part has no such pin; it is left out of account
 *   <li>{@code lead-missing} (ref, pin): no hole given, nor for a twin of it
 *   <li>{@code pin1-alone} (ref, hole): only chips are placed by their first pin
 *   <li>{@code chip-in-rail} (ref, hole): a chip's first pin is in a rail
 *   <li>{@code chip-in-half} (ref, rows): both rows of pins on one side of the groove, so that
 *       strips short pins that face each other
 *   <li>{@code chip-over-groove} (ref, hole): with pin 1 there the other row lies over no hole
 *   <li>{@code chip-off-board} (ref, hole, board model): with pin 1 there pins lie off the board
 *   <li>{@code chip-spread} (ref): holes that the package does not reach
 *   <li>{@code link-in-strip} (hole, hole): a link from a strip to itself
 *   <li>{@code rails-joined} (hole, hole): a link from a + rail to a − rail
 * </ul>
 *
 * "Who" is a pin ({@code R1.2}) or a link ({@code link 1}, counted from 1). {@code at} points into
 * the request, as in {@code /build/placed/2/holes/a}, {@code /build/links/0/1} or, for missing
 * parts, {@code /build/placed}.
 */
public final class BuildCheck {
  private final Build build;
  private final Map<String, Part> parts = new LinkedHashMap<>();
  private final Map<Hole, String> taken = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private BuildCheck(Build build, List<Part> parts) {
    this.build = build;
    parts.forEach(part -> this.parts.put(part.ref(), part));
  }

  /** All findings: parts placed in their order, parts missing, links in their order. */
  public static List<Finding> findings(Build build, List<Part> parts) {
    var check = new BuildCheck(build, parts);
    check.placed();
    check.links();
    return List.copyOf(check.findings);
  }

  private void placed() {
    var seen = new LinkedHashSet<String>();
    for (int i = 0; i < build.placed().size(); i++) {
      Placed placed = build.placed().get(i);
      String at = "/build/placed/" + i;
      if (!seen.add(placed.ref())) {
        find(at, "part-twice", placed.ref());
      } else {
        leads(at, placed, Optional.ofNullable(parts.get(placed.ref())));
      }
    }
    parts.keySet().stream()
        .filter(ref -> !seen.contains(ref))
        .forEach(ref -> find("/build/placed", "part-missing", ref));
  }

  private void leads(String at, Placed placed, Optional<Part> part) {
    if (part.isEmpty()) {
      find(at + "/ref", "ref-unknown", placed.ref());
    }
    boolean chip = part.isPresent() && ChipCheck.chip(part.get());
    if (!chip) {
      placed.pin1().ifPresent(hole -> find(at + "/pin1", "pin1-alone", placed.ref(), hole));
    }
    boolean byFirst = placed.pin1().isPresent();
    placed
        .holes()
        .forEach(
            (pin, hole) -> lead(byFirst ? at : at + "/holes/" + escape(pin), placed, pin, hole));
    part.ifPresent(known -> leads(at, placed, known, chip));
  }

  private void leads(String at, Placed placed, Part part, boolean chip) {
    List<Finding> odd =
        chip ? ChipCheck.findings(at, build.board(), placed, part) : List.<Finding>of();
    findings.addAll(odd);
    if (odd.isEmpty() || odd.get(0).kind().equals("chip-spread")) {
      findings.addAll(LeadCheck.findings(at, build.board(), placed, part));
    }
  }

  /** A chip that was placed by its first pin is off the board as a whole. */
  private void lead(String at, Placed placed, String pin, Hole hole) {
    if (placed.pin1().isEmpty() || build.board().stripOrNone(hole) >= 0) {
      hole(at, placed.ref() + "." + pin, hole);
    }
  }

  private void links() {
    for (int i = 0; i < build.links().size(); i++) {
      Link link = build.links().get(i);
      String at = "/build/links/" + i;
      String who = "link " + (i + 1);
      hole(at + "/0", who, link.from());
      hole(at + "/1", who, link.to());
      int from = build.board().stripOrNone(link.from());
      if (from >= 0 && from == build.board().stripOrNone(link.to())) {
        find(at, "link-in-strip", link.from(), link.to());
      }
      if (sign(link.from()) * sign(link.to()) < 0) {
        find(at, "rails-joined", link.from(), link.to());
      }
    }
  }

  private void hole(String at, String who, Hole hole) {
    if (build.board().stripOrNone(hole) < 0) {
      noStrip(at, who, hole);
    } else if (build.board().has(hole)) {
      String other = taken.putIfAbsent(hole, who);
      if (other != null) {
        find(at, "hole-taken", who, hole, other);
      }
    }
  }

  private void noStrip(String at, String who, Hole hole) {
    var rail = build.board().rail(hole.track());
    if (rail.isPresent() && hole.column() == 0) {
      find(at, "rail-side", who, hole);
    } else if (rail.isPresent() && rail.get().gaps().contains(hole.column())) {
      find(at, "rail-gap", who, hole);
    } else {
      find(at, "off-board", who, hole, build.board().name());
    }
  }

  private static int sign(Hole hole) {
    return !hole.rail() ? 0 : hole.track().charAt(0) == '+' ? 1 : -1;
  }

  /** As a step of a JSON pointer (RFC 6901). */
  static String escape(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  private void find(String at, String kind, Object... named) {
    findings.add(Finding.of(at, kind, named));
  }
}
