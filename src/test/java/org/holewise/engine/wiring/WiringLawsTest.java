package org.holewise.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.Allow;
import org.holewise.engine.exercise.Exercise;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for any exercise and any build of it, on seeded random ones. */
@Tag("fast")
class WiringLawsTest {

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aSoundBuildMatchesAndAnySingleSlipIsFoundWithThePlaceItCameFrom(boolean extraLinks) {
    int found = 0;
    for (int seed = 0; seed < (extraLinks ? 1_500 : 300); seed++) {
      var labs = new Labs(seed);
      Exercise exercise = labs.exercise(2 + seed % 8, allow(seed, extraLinks));
      Build sound = sound(labs, exercise);
      assertThat(WiringComparison.compare(exercise, sound)).matches(WiringReport::matches);
      var slip = labs.slip(sound);
      var report = WiringComparison.compare(exercise, slip.build());
      if (!report.matches()) {
        found++;
        assertThat(report.differences()).as("seed %s", seed).hasSize(1);
        assertThat(all(report.differences().get(0)))
            .as("seed %s: %s came from %s", seed, slip.what(), slip.from())
            .anyMatch(repair -> undoes(repair, slip));
      }
    }
    assertThat(found).isGreaterThan(extraLinks ? 700 : 150);
  }

  @ParameterizedTest
  @CsvSource({"1, 600", "2, 600", "3, 300", "6, 40"})
  void whatIsRepairedAsTheReportSaysMatches(int slips, int builds) {
    int repaired = 0;
    for (int seed = 0; seed < builds; seed++) {
      var labs = new Labs(1_000 + seed);
      Exercise exercise = labs.exercise(2 + seed % 8 + slips, allow(seed, true));
      Build build = slipped(labs, sound(labs, exercise), slips);
      var report = WiringComparison.compare(exercise, build);
      // Many slips: the search may end at its limit, with a set a little larger than the smallest.
      assertThat(report.differences())
          .as("seed %s", seed)
          .hasSizeLessThanOrEqualTo(slips + slips / 4);
      var repairs = report.differences().stream().map(Difference::repair).toList();
      var done = Repairs.done(build, repairs);
      if (done.isPresent()) {
        repaired += repairs.size();
        assertThat(WiringComparison.compare(exercise, done.get()))
            .as("seed %s: %s", seed, report)
            .matches(WiringReport::matches);
      }
    }
    assertThat(repaired).isGreaterThan(builds / 2);
  }

  @Test
  void whatStandsInTheOrCanTakeItsRepairsPlace() {
    int tried = 0;
    for (int seed = 0; seed < 150; seed++) {
      var labs = new Labs(5_000 + seed);
      Exercise exercise = labs.exercise(3 + seed % 5, allow(seed, seed % 4 > 0));
      Build build = slipped(labs, sound(labs, exercise), 1 + seed % 3);
      var differences = WiringComparison.compare(exercise, build).differences();
      for (Difference difference : differences) {
        for (Repair other : difference.or()) {
          var set = new ArrayList<Repair>();
          differences.forEach(d -> set.add(d.equals(difference) ? other : d.repair()));
          var done = Repairs.done(build, set);
          if (done.isPresent()) {
            tried++;
            assertThat(WiringComparison.compare(exercise, done.get()))
                .as("seed %s: %s", seed, set)
                .matches(WiringReport::matches);
          }
        }
      }
    }
    assertThat(tried).isGreaterThan(200);
  }

  @Test
  void partsLeftOutLeadsInTheAirAndLinksForgottenCostOneEachAtMost() {
    int placed = 0;
    for (int seed = 0; seed < 300; seed++) {
      var labs = new Labs(11_000 + seed);
      Exercise exercise = labs.exercise(3 + seed % 7, allow(seed, true));
      Build build = sound(labs, exercise);
      int missing = seed % 3;
      var parts = new ArrayList<>(build.placed());
      for (int i = 0; i < missing; i++) {
        parts.remove((seed + i) % parts.size());
      }
      var first = new LinkedHashMap<>(parts.get(0).holes());
      first.remove(first.keySet().iterator().next());
      parts.set(0, new Placed(parts.get(0).ref(), first, Optional.empty(), Optional.empty()));
      var links = new ArrayList<>(build.links());
      links.subList(0, Math.min(1, links.size())).clear();
      var report = WiringComparison.compare(exercise, new Build(build.board(), parts, links));
      assertThat(report.differences()).as("seed %s", seed).hasSizeBetween(missing, missing + 2);
      assertThat(report.differences())
          .filteredOn(difference -> difference.repair() instanceof Repair.PlacePart)
          .hasSize(missing)
          .allSatisfy(difference -> assertThat(difference.or()).isEmpty());
      placed += missing;
    }
    assertThat(placed).isGreaterThan(200);
  }

  @Test
  void anUnrelatedLayoutGetsARepairableReportToo() {
    for (int seed = 0; seed < 10; seed++) {
      var labs = new Labs(9_000 + seed);
      Exercise exercise = labs.exercise(12, Allow.ALL);
      Build build = slipped(labs, sound(labs, exercise), 80);
      var report = WiringComparison.compare(exercise, build);
      assertThat(report.score()).isBetween(0.0, 1.0);
      var repairs = report.differences().stream().map(Difference::repair).toList();
      Repairs.done(build, repairs)
          .ifPresent(
              done ->
                  assertThat(WiringComparison.compare(exercise, done))
                      .matches(WiringReport::matches));
    }
  }

  private static Allow allow(int seed, boolean extraLinks) {
    return new Allow(seed % 3 > 0, seed % 5 > 0, extraLinks);
  }

  private static Build sound(Labs labs, Exercise exercise) {
    Build sound = labs.build(exercise);
    return exercise.allow().extraLinks() ? sound : Labs.tidy(exercise, sound);
  }

  private static Build slipped(Labs labs, Build sound, int slips) {
    Build build = sound;
    for (int i = 0; i < slips; i++) {
      build = labs.slip(build).build();
    }
    return build;
  }

  private static List<Repair> all(Difference difference) {
    return Stream.concat(Stream.of(difference.repair()), difference.or().stream()).toList();
  }

  private static boolean undoes(Repair repair, Labs.Slip slip) {
    if (repair instanceof Repair.MoveLead lead) {
      return lead.pin().toString().equals(slip.what()) && lead.to().contains(slip.from());
    }
    return repair instanceof Repair.MoveLinkEnd end
        && slip.what().equals("link " + end.link() + " " + end.end())
        && end.to().contains(slip.from());
  }
}
