package org.holewise.engine.netlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.holewise.engine.board.Benches;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.PlainKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class AsBuiltTest {

  @Nested
  class APorchLamp {
    private final List<Part> parts =
        List.of(
            PlainKind.BATTERY.part("B1"),
            PlainKind.SWITCH.part("S1"),
            PlainKind.RESISTOR.part("R1"),
            PlainKind.LED.part("D1"));
    private final AsBuilt built =
        AsBuilt.of(
            Benches.build(
                "830-split",
                "B1 +=+j2 -=-a2",
                "S1 1=+j6 2=j8",
                "R1 1=f8 2=f12",
                "D1 a=g12 k=g14",
                "link f14 e14",
                "link a14 -a14"),
            parts);

    @Test
    void hasTheNetsOfItsSchematic() {
      assertThat(built.netlist().nets())
          .extracting(net -> net.pins().toString())
          .containsExactly("[B1.+, S1.1]", "[B1.-, D1.k]", "[S1.2, R1.1]", "[R1.2, D1.a]");
    }

    @Test
    void itsNetsRememberTheirStripsAndAreNamedByTheirFirstPin() {
      BuiltNet back = built.netlist().nets().get(1);
      assertThat(back.name()).isEqualTo("B1.-");
      assertThat(back.strips()).containsExactly(26, 27, 128);
    }

    @Test
    void aHoleTellsItsNet() {
      assertThat(built.netAt(Benches.hole("c14"))).isEqualTo(built.net(new Pin("D1", "k")));
      assertThat(built.netAt(Benches.hole("c15"))).isEqualTo(-1);
      assertThat(built.netAt(Benches.hole("-a40"))).isEqualTo(-1);
      assertThat(built.netAt(Benches.hole("+j32"))).isEqualTo(-1);
      assertThat(built.netAt(Benches.hole("9:a1"))).isEqualTo(-1);
    }

    @Test
    void withoutALinkTheNetFallsApart() {
      var cut = built.without(1);
      assertThat(cut.nets()).isEqualTo(5);
      assertThat(cut.net(new Pin("D1", "k"))).isNotEqualTo(cut.net(new Pin("B1", "-")));
    }

    @Test
    void aLinkTooManyJoinsNets() {
      var joined = built.with(new Link(Benches.hole("j12"), Benches.hole("-a20")));
      assertThat(joined.nets()).isEqualTo(3);
    }

    @Test
    void aPinThatThePartsLackIsRefused() {
      assertThatThrownBy(() -> built.net(new Pin("R9", "1"))).hasMessageContaining("R9.1");
    }
  }

  @Test
  void apartFromTheBoardAPinIsAlone() {
    var parts =
        List.of(
            PlainKind.RESISTOR.part("R1"),
            PlainKind.RESISTOR.part("R2"),
            PlainKind.RESISTOR.part("R3"));
    var built = AsBuilt.of(Benches.build("170", "R1 1=a1 2=a18", "R2 1=b1", "R9 1=c1 2=c2"), parts);
    assertThat(built.netlist().nets())
        .extracting(net -> net.pins().toString())
        .containsExactly("[R1.1, R2.1]", "[R1.2]", "[R2.2]", "[R3.1]", "[R3.2]");
    assertThat(built.netlist().nets().get(1).strips()).isEmpty();
  }

  @Test
  void twinsAreLeftToThePart() {
    var built =
        AsBuilt.netlist(
            Benches.build("830", "S1 1=e5 1a=f5 2=e7 2a=f7"), List.of(PlainKind.BUTTON.part("S1")));
    assertThat(built.nets()).hasSize(4);
  }

  @Test
  void tenThousandRandomBuildsAgreeWithWalkingFromHoleToHole() {
    var random = new Random(20_260_729);
    int joined = 0;
    for (int round = 0; round < 10_000; round++) {
      var parts = randomParts(random);
      Build build = randomBuild(random, parts);
      var pins = parts.stream().flatMap(part -> part.pins().stream()).toList();
      Netlist netlist = AsBuilt.netlist(build, parts);
      assertThat(sets(netlist))
          .as("round %s: %s", round, build)
          .isEqualTo(FloodFill.reach(build, pins));
      joined += pins.size() - netlist.nets().size();
    }
    assertThat(joined).isGreaterThan(10_000);
  }

  @Test
  void variantsAreWhatTheChangedBuildGives() {
    var random = new Random(4711);
    for (int round = 0; round < 2_000; round++) {
      var parts = randomParts(random);
      Build build = randomBuild(random, parts);
      if (build.links().isEmpty()) {
        continue;
      }
      int link = random.nextInt(build.links().size());
      int end = random.nextInt(2);
      Hole hole = randomHole(random, build.board(), 20);
      var built = AsBuilt.of(build, parts);
      assertThat(built.without(link).netlist())
          .isEqualTo(AsBuilt.netlist(links(build, link, List.of()), parts));
      assertThat(built.with(link, end, hole).netlist())
          .isEqualTo(
              AsBuilt.netlist(
                  links(build, link, List.of(build.links().get(link).with(end, hole))), parts));
      Placed moved = build.placed().get(0);
      String pin = moved.holes().keySet().iterator().next();
      assertThat(built.with(new Pin(moved.ref(), pin), hole).netlist())
          .isEqualTo(AsBuilt.netlist(moved(build, pin, hole), parts));
    }
  }

  private static Build links(Build build, int link, List<Link> instead) {
    var links = new ArrayList<>(build.links());
    links.remove(link);
    links.addAll(link, instead);
    return new Build(build.board(), build.placed(), links);
  }

  private static Build moved(Build build, String pin, Hole hole) {
    var placed = new ArrayList<>(build.placed());
    var holes = new LinkedHashMap<>(placed.get(0).holes());
    holes.put(pin, hole);
    placed.set(0, new Placed(placed.get(0).ref(), holes, Optional.empty(), Optional.empty()));
    return new Build(build.board(), placed, build.links());
  }

  private static Map<Pin, Set<Pin>> sets(Netlist netlist) {
    var sets = new LinkedHashMap<Pin, Set<Pin>>();
    netlist
        .netOf()
        .forEach((pin, net) -> sets.put(pin, new LinkedHashSet<>(netlist.nets().get(net).pins())));
    return sets;
  }

  private static List<Part> randomParts(Random random) {
    var kinds = List.of(PlainKind.RESISTOR, PlainKind.NPN, PlainKind.LED, PlainKind.BUTTON);
    var parts = new ArrayList<Part>();
    for (int i = 1 + random.nextInt(8); i > 0; i--) {
      parts.add(kinds.get(random.nextInt(kinds.size())).part("X" + i));
    }
    return parts;
  }

  /** Close together, so that much touches; now and then past an edge. */
  private static Build randomBuild(Random random, List<Part> parts) {
    var names = BoardModels.names();
    BoardModel board = BoardModels.named(names.get(random.nextInt(names.size()))).orElseThrow();
    int spread = 3 + random.nextInt(70);
    var placed = new ArrayList<Placed>();
    for (Part part : parts) {
      var holes = new LinkedHashMap<String, Hole>();
      for (Pin pin : part.pins()) {
        holes.put(pin.name(), randomHole(random, board, spread));
      }
      placed.add(new Placed(part.ref(), holes, Optional.empty(), Optional.empty()));
    }
    var links = new ArrayList<Link>();
    for (int i = random.nextInt(10); i > 0; i--) {
      links.add(new Link(randomHole(random, board, spread), randomHole(random, board, spread)));
    }
    return new Build(board, placed, links);
  }

  private static Hole randomHole(Random random, BoardModel board, int spread) {
    var tracks = "a b c d e f g h i j +a -a +j -j".split(" ");
    String track = tracks[random.nextInt(tracks.length)];
    int boards = random.nextInt(4) == 0 ? 2 : 1;
    int first = track.length() == 2 ? 0 : 1;
    int least = Math.max(first, board.columns() / 2 - spread / 2);
    return new Hole(1 + random.nextInt(boards), track, least + random.nextInt(spread));
  }
}
