package org.holewise.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.junit.jupiter.api.Test;

/**
 * The smallest set against brute force: {@link Equivalents} knows every netlist that will do, and
 * here every single repair is tried, each lead and each end of a link in each strip.
 */
class SmallestSetTest {

  @Test
  void itsCostIsZeroWhereTheNetsWillDoAndOnlyThere() {
    int same = 0;
    for (int seed = 0; seed < 800; seed++) {
      var labs = new Labs(20_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 4, allow(seed, true));
      Build build = labs.slip(labs.build(exercise)).build();
      boolean will = new Equivalents(exercise).contains(build);
      same += will ? 1 : 0;
      assertThat(WiringComparison.compare(exercise, build).matches())
          .as("seed %s", seed)
          .isEqualTo(will);
    }
    assertThat(same).isBetween(100, 700);
  }

  @Test
  void ofOneRepairTheListHoldsEveryOtherThatWouldDo() {
    int compared = 0;
    for (int seed = 0; seed < 200; seed++) {
      var labs = new Labs(30_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 4, allow(seed, seed % 5 > 0));
      Build sound = labs.build(exercise);
      Build build =
          labs.slip(exercise.allow().extraLinks() ? sound : Labs.tidy(exercise, sound)).build();
      var report = WiringComparison.compare(exercise, build);
      if (report.differences().size() == 1) {
        compared++;
        var enough = new Equivalents(exercise);
        var brute = new TreeSet<String>();
        changes(build, allStrips(build))
            .forEach(
                (what, changed) -> {
                  if (enough.contains(changed)) {
                    brute.add(what);
                  }
                });
        assertThat(named(build, report)).as("seed %s", seed).isEqualTo(brute);
      }
    }
    assertThat(compared).isGreaterThan(80);
  }

  @Test
  void noSmallerSetWouldDo() {
    int[] compared = new int[4];
    for (int seed = 0; compared[3] < 6 || compared[2] < 60; seed++) {
      var labs = new Labs(40_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 3, allow(seed, true));
      Build build = labs.build(exercise);
      for (int slip = 0; slip < 3; slip++) {
        build = labs.slip(build).build();
      }
      int cost = WiringComparison.compare(exercise, build).differences().size();
      if (cost >= 2 && (cost == 2 || compared[3] < 6)) {
        compared[cost]++;
        var enough = new Equivalents(exercise);
        for (Build once : changes(build, fewStrips(build)).values()) {
          assertThat(enough.contains(once)).as("seed %s", seed).isFalse();
          if (cost == 3) {
            for (Build twice : changes(once, fewStrips(build)).values()) {
              assertThat(enough.contains(twice)).as("seed %s", seed).isFalse();
            }
          }
        }
      }
    }
  }

  private static Allow allow(int seed, boolean extraLinks) {
    return new Allow(seed % 3 > 0, seed % 4 > 0, extraLinks);
  }

  /** The build after each single repair, by what the repair is. */
  private static Map<String, Build> changes(Build build, Set<Integer> strips) {
    var changes = new LinkedHashMap<String, Build>();
    for (int strip : strips) {
      free(build, strip)
          .forEach(
              hole -> {
                leads(build, strip, hole, changes);
                ends(build, strip, hole, changes);
              });
    }
    for (int link = 0; link < build.links().size(); link++) {
      changes.put("remove " + link, Labs.without(build, link));
    }
    var used = fewStrips(build);
    for (int one : used) {
      for (int other : used) {
        if (one < other) {
          free(build, one)
              .forEach(from -> free(build, other).forEach(to -> add(build, from, to, changes)));
        }
      }
    }
    return changes;
  }

  private static void leads(Build build, int strip, Hole hole, Map<String, Build> changes) {
    for (int i = 0; i < build.placed().size(); i++) {
      Placed part = build.placed().get(i);
      for (var lead : part.holes().entrySet()) {
        if (build.board().stripOrNone(lead.getValue()) != strip) {
          changes.put(
              part.ref() + "." + lead.getKey() + " " + strip,
              Labs.moved(build, i, lead.getKey(), hole));
        }
      }
    }
  }

  private static void ends(Build build, int strip, Hole hole, Map<String, Build> changes) {
    for (int i = 0; i < 2 * build.links().size(); i++) {
      Link link = build.links().get(i / 2);
      if (build.board().stripOrNone(link.end(i % 2)) != strip) {
        var links = new ArrayList<>(build.links());
        links.set(i / 2, link.with(i % 2, hole));
        changes.put(
            "link " + i / 2 + " " + i % 2 + " " + strip,
            new Build(build.board(), build.placed(), links));
      }
    }
  }

  private static void add(Build build, Hole from, Hole to, Map<String, Build> changes) {
    var links = new ArrayList<>(build.links());
    links.add(new Link(from, to));
    changes.put(
        "add " + build.board().stripOrNone(from) + " " + build.board().stripOrNone(to),
        new Build(build.board(), build.placed(), links));
  }

  /** The first free hole of a strip, if there is one. */
  private static List<Hole> free(Build build, int strip) {
    var used = new LinkedHashSet<Hole>();
    build.placed().forEach(part -> used.addAll(part.holes().values()));
    build.links().forEach(link -> used.addAll(List.of(link.from(), link.to())));
    return build.board().holes(strip).stream()
        .filter(hole -> !used.contains(hole))
        .limit(1)
        .toList();
  }

  private static Set<Integer> allStrips(Build build) {
    return new LinkedHashSet<>(IntStream.range(0, build.board().strips()).boxed().toList());
  }

  /** The strips in use, and one that is not. */
  private static Set<Integer> fewStrips(Build build) {
    var strips = new TreeSet<Integer>();
    build
        .placed()
        .forEach(
            part ->
                part.holes().values().forEach(hole -> strips.add(build.board().stripOrNone(hole))));
    build
        .links()
        .forEach(
            link ->
                strips.addAll(
                    List.of(
                        build.board().stripOrNone(link.from()),
                        build.board().stripOrNone(link.to()))));
    allStrips(build).stream()
        .filter(strip -> !strips.contains(strip))
        .findFirst()
        .ifPresent(strips::add);
    return strips;
  }

  private static Set<String> named(Build build, WiringReport report) {
    var names = new TreeSet<String>();
    report.differences().stream()
        .flatMap(d -> Stream.concat(Stream.of(d.repair()), d.or().stream()))
        .forEach(repair -> names.addAll(named(build, repair)));
    return names;
  }

  private static List<String> named(Build build, Repair repair) {
    if (repair instanceof Repair.MoveLead lead) {
      return lead.to().stream().map(to -> lead.pin() + " " + strip(build, to)).toList();
    }
    if (repair instanceof Repair.MoveLinkEnd end) {
      return end.to().stream()
          .map(to -> "link " + end.link() + " " + end.end() + " " + strip(build, to))
          .toList();
    }
    if (repair instanceof Repair.AddLink add) {
      return add.from().stream()
          .flatMap(from -> add.to().stream().map(to -> pair(strip(build, from), strip(build, to))))
          .toList();
    }
    return List.of("remove " + ((Repair.RemoveLink) repair).link());
  }

  private static String pair(int one, int other) {
    return "add " + Math.min(one, other) + " " + Math.max(one, other);
  }

  private static int strip(Build build, Hole hole) {
    return build.board().stripOrNone(hole);
  }
}
