package org.holewise.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Changes that must not change the score. */
@Tag("fast")
class MetamorphicTest {
  private static final int BUILDS = 150;

  @Test
  void otherRefs() {
    same((exercise, build) -> new Lab(renamed(exercise), renamed(build)));
  }

  @Test
  void otherOrderOfPartsAndLinks() {
    var random = new Random(3);
    same(
        (exercise, build) -> {
          var placed = new ArrayList<>(build.placed());
          var links = new ArrayList<>(build.links());
          var parts = new ArrayList<>(exercise.parts());
          Collections.shuffle(placed, random);
          Collections.shuffle(links, random);
          Collections.shuffle(parts, random);
          return new Lab(
              with(exercise, parts, exercise.nets()), new Build(build.board(), placed, links));
        });
  }

  @Test
  void aColumnToTheRight() {
    same(
        (exercise, build) ->
            new Lab(
                exercise,
                moved(
                    build,
                    hole ->
                        hole.rail()
                            ? hole
                            : new Hole(hole.board(), hole.track(), hole.column() + 1))));
  }

  @Test
  void mirroredAcrossTheGroove() {
    same(
        (exercise, build) ->
            new Lab(
                exercise,
                moved(
                    build,
                    hole -> {
                      String track = hole.track();
                      char row = (char) ('a' + 'j' - track.charAt(track.length() - 1));
                      return new Hole(
                          hole.board(),
                          hole.rail() ? track.substring(0, 1) + row : String.valueOf(row),
                          hole.column());
                    })));
  }

  @Test
  void onTheSecondBoard() {
    same(
        (exercise, build) ->
            new Lab(exercise, moved(build, hole -> new Hole(2, hole.track(), hole.column()))));
  }

  @Test
  void equalPartsSwapped() {
    same(
        (exercise, build) -> {
          var parts = exercise.parts();
          for (Part one : parts) {
            for (Part other : parts) {
              if (!one.equals(other) && one.alike(other)) {
                return new Lab(
                    exercise,
                    refs(
                        build,
                        ref ->
                            ref.equals(one.ref())
                                ? other.ref()
                                : ref.equals(other.ref()) ? one.ref() : ref));
              }
            }
          }
          return new Lab(exercise, build);
        });
  }

  @Test
  void pinsExchanged() {
    same(
        (exercise, build) -> {
          var placed = new ArrayList<Placed>();
          for (Placed part : build.placed()) {
            Part known = exercise.part(part.ref()).orElseThrow();
            var ways = known.kind().exchanges(known.fields());
            var holes = new LinkedHashMap<String, Hole>();
            part.holes()
                .forEach(
                    (pin, hole) -> holes.put(ways.isEmpty() ? pin : ways.get(0).get(pin), hole));
            placed.add(new Placed(part.ref(), holes, part.pin1(), part.marked()));
          }
          return new Lab(exercise, new Build(build.board(), placed, build.links()));
        });
  }

  /** A sound link replaced by two over a strip that nothing touches: still sound. */
  @Test
  void aLinkReplacedByTwo() {
    int replaced = 0;
    for (int seed = 0; seed < BUILDS; seed++) {
      var labs = new Labs(70_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 7, Allow.ALL);
      Build sound = labs.build(exercise);
      if (!sound.links().isEmpty()) {
        var links = new ArrayList<>(sound.links());
        Link gone = links.remove(seed % links.size());
        links.add(new Link(gone.from(), new Hole(3, "a", 5)));
        links.add(new Link(new Hole(3, "c", 5), gone.to()));
        Build two = new Build(sound.board(), sound.placed(), links);
        replaced++;
        assertThat(WiringComparison.compare(exercise, two)).matches(WiringReport::matches);
        Build slip = labs.slip(sound).build();
        assertThat(WiringComparison.compare(exercise, labs.slip(two).build()).differences())
            .hasSizeLessThanOrEqualTo(1);
        assertThat(WiringComparison.compare(exercise, slip).differences())
            .hasSizeLessThanOrEqualTo(1);
      }
    }
    assertThat(replaced).isGreaterThan(BUILDS / 2);
  }

  private record Lab(Exercise exercise, Build build) {}

  private interface Change {
    Lab of(Exercise exercise, Build build);
  }

  private static void same(Change change) {
    int differ = 0;
    for (int seed = 0; seed < BUILDS; seed++) {
      var labs = new Labs(60_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 7, Allow.ALL);
      Build build = labs.build(exercise);
      for (int slip = 0; slip < seed % 4; slip++) {
        build = labs.slip(build).build();
      }
      var before = WiringComparison.compare(exercise, build);
      Lab changed = change.of(exercise, build);
      var after = WiringComparison.compare(changed.exercise(), changed.build());
      differ += before.matches() ? 0 : 1;
      assertThat(after.score()).as("seed %s", seed).isEqualTo(before.score());
      assertThat(after.differences()).hasSameSizeAs(before.differences());
    }
    assertThat(differ).isGreaterThan(BUILDS / 4);
  }

  private static Exercise with(Exercise exercise, List<Part> parts, List<Net> nets) {
    return new Exercise(
        exercise.slug(),
        exercise.title(),
        exercise.aim(),
        exercise.board(),
        exercise.meter(),
        parts,
        nets,
        exercise.conditions(),
        exercise.readings(),
        exercise.allow(),
        exercise.marks());
  }

  private static Exercise renamed(Exercise exercise) {
    return with(
        exercise,
        exercise.parts().stream()
            .map(part -> new Part("Z" + part.ref(), part.kind(), part.fields()))
            .toList(),
        exercise.nets().stream()
            .map(
                net ->
                    new Net(
                        net.name(),
                        net.pins().stream().map(p -> new Pin("Z" + p.ref(), p.name())).toList()))
            .toList());
  }

  private static Build renamed(Build build) {
    return refs(build, ref -> "Z" + ref);
  }

  private static Build refs(Build build, UnaryOperator<String> rename) {
    return new Build(
        build.board(),
        build.placed().stream()
            .map(p -> new Placed(rename.apply(p.ref()), p.holes(), p.pin1(), p.marked()))
            .toList(),
        build.links());
  }

  private static Build moved(Build build, UnaryOperator<Hole> move) {
    var placed = new ArrayList<Placed>();
    for (Placed part : build.placed()) {
      var holes = new LinkedHashMap<String, Hole>();
      part.holes().forEach((pin, hole) -> holes.put(pin, move.apply(hole)));
      placed.add(new Placed(part.ref(), holes, Optional.empty(), part.marked()));
    }
    return new Build(
        build.board(),
        placed,
        build.links().stream()
            .map(link -> new Link(move.apply(link.from()), move.apply(link.to())))
            .toList());
  }
}
