package org.holewise.document.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.holewise.document.picture.LampBench.hole;
import static org.holewise.document.picture.LampBench.lamp;
import static org.holewise.document.picture.LampBench.link;
import static org.holewise.document.picture.LampBench.placed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Scanner;
import java.util.stream.Collectors;
import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.document.picture.BoardPicture.Dot;
import org.holewise.document.picture.BoardPicture.Label;
import org.holewise.document.picture.BoardPicture.Lead;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.board.Link;
import org.holewise.engine.board.Placed;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("fast")
class BoardPictureTest {
  private static final int BUILDS = 60;

  /** Places are rounded to a tenth of a pixel. */
  private static final double ROUNDING = 0.11;

  private static BoardPicture draw(Build build, View view, String... looked) {
    var holes = List.of(looked).stream().map(LampBench::hole).toList();
    return BoardPicture.of(build, LampBench.PARTS, Highlight.of(holes), view, false);
  }

  private static Map<Hole, Spot> holes(BoardPicture picture) {
    return picture.holes().stream().collect(Collectors.toMap(Dot::hole, Dot::at));
  }

  @ParameterizedTest
  @EnumSource
  void everyLeadAndLinkEndsInItsHole(View view) {
    for (Build build : builds()) {
      BoardPicture picture = draw(build, view);
      Map<Hole, Spot> holes = holes(picture);
      for (Lead lead : picture.leads()) {
        assertThat(lead.at()).isEqualTo(holes.get(lead.hole()));
        Placed placed = placement(build, lead.pin().ref());
        Hole written = placed.holes().get(lead.pin().name());
        assertThat(strip(build.board(), lead.hole())).isEqualTo(strip(build.board(), written));
        assertThat(lead.path())
            .contains(Pen.number(lead.at().x()) + " " + Pen.number(lead.at().y()));
      }
      picture.wires().forEach(wire -> assertThat(holes.values()).contains(wire.from(), wire.to()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void noTwoTextsOverlapAndAllAreInTheFrame(View view) {
    for (Build build : builds()) {
      BoardPicture picture = draw(build, view, "f12", "+j8");
      List<Label> labels = picture.labels();
      for (int i = 0; i < labels.size(); i++) {
        assertThat(labels.get(i).extent().inside(picture.frame())).as("%s", labels.get(i)).isTrue();
        for (int j = 0; j < i; j++) {
          assertThat(labels.get(i).extent().shared(labels.get(j).extent()))
              .as("%s and %s", labels.get(i), labels.get(j))
              .isZero();
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyPartAndLinkOfAnOrdinaryBuildIsNamed(View view) {
    assertThat(draw(lamp(), view).labels())
        .extracting(Label::text)
        .contains("R1 390 Ω", "D1 green", "S1", "L1", "L2", "a", "k");
  }

  @ParameterizedTest
  @EnumSource
  void theRingIsRoundTheHoleThatIsPointedAt(View view) {
    BoardPicture picture = draw(lamp(), view, "f12", "-a2");
    var holes = holes(picture);
    assertThat(picture.rings()).hasSize(2);
    assertThat(picture.rings().get(0).at()).isEqualTo(holes.get(hole("f12")));
    assertThat(picture.rings().get(1).at()).isEqualTo(leadAt(picture, "B1", "-"));
  }

  @ParameterizedTest
  @EnumSource
  void theDashedOutlineHoldsTheHolesOfItsStripAndNoOther(View view) {
    BoardPicture picture = draw(lamp(), view, "f12", "+j6");
    assertThat(inside(picture, 0))
        .containsExactlyInAnyOrder(hole("f12"), hole("g12"), hole("h12"), hole("i12"), hole("j12"));
    assertThat(inside(picture, 1)).isNotEmpty().allMatch(hole -> hole.track().equals("+j"));
  }

  @Test
  void aRailWithoutAHoleThereTakesTheNearestFreeOneOnTheSameMetal() {
    // On 830 boards the rails have holes beside columns 3 to 7, 9 to 13, … 27 to 31, 33 to 37.
    var build =
        new Build(
            LampBench.EXERCISE.board(),
            List.of(placed("S1", "1", "+j2", "2", "+j2"), placed("R1", "1", "-a31", "2", "a31")),
            List.of(link("-a31", "a30")));
    BoardPicture picture = draw(build, View.ALONG);
    assertThat(picture.leads())
        .extracting(Lead::hole)
        .containsExactly(hole("+j3"), hole("+j4"), hole("-a31"), hole("a31"));
  }

  @Test
  void oneViewIsTheOtherTurnedAQuarter() {
    var whole = new Build(LampBench.EXERCISE.board(), List.of(), List.of());
    BoardPicture along = BoardPicture.of(whole, List.of(), Highlight.NONE, View.ALONG, true);
    BoardPicture down = BoardPicture.of(whole, List.of(), Highlight.NONE, View.DOWN, true);
    var holes = holes(down);
    assertThat(along.holes()).hasSize(830);
    for (Dot dot : along.holes()) {
      Spot turned = holes.get(dot.hole());
      assertThat(turned.y()).isCloseTo(dot.at().x(), within(ROUNDING));
      assertThat(turned.x()).isCloseTo(along.frame().height() - dot.at().y(), within(ROUNDING));
    }
  }

  @Test
  void onlyTheUsedColumnsAreDrawnWithAMargin() {
    Section section = draw(lamp(), View.ALONG).sections().get(0);
    assertThat(section.first()).isEqualTo(1);
    assertThat(section.last()).isEqualTo(16);
    assertThat(section.cutBefore()).isFalse();
    assertThat(section.cutAfter()).isTrue();
  }

  @Test
  void aLongUnusedStretchIsLeftOut() {
    var build =
        new Build(
            LampBench.EXERCISE.board(),
            List.of(placed("R1", "1", "a5", "2", "a9"), placed("D1", "a", "a40", "k", "a42")),
            List.of(link("-a5", "-j40")));
    BoardPicture picture =
        BoardPicture.of(
            build, LampBench.PARTS, Highlight.of(List.of(hole("-a5"))), View.ALONG, false);
    assertThat(picture.sections())
        .extracting(Section::first, Section::last)
        .containsExactly(tuple(3, 11), tuple(38, 44));
    assertThat(picture.wires()).hasSize(1);
    assertThat(picture.outlines()).hasSize(1);
  }

  @Test
  void joinedBoardsAreDrawnOneAfterTheOther() {
    var build =
        new Build(
            LampBench.EXERCISE.board(), List.of(placed("R1", "1", "a1", "2", "2:a2")), List.of());
    BoardPicture picture = draw(build, View.ALONG);
    assertThat(picture.sections()).extracting(Section::board).containsExactly(1, 2);
    assertThat(picture.leads()).hasSize(2);
    assertThat(leadAt(picture, "R1", "2").x()).isGreaterThan(leadAt(picture, "R1", "1").x() + 300);
  }

  @Test
  void whatIsNotOnTheBoardIsLeftOut() {
    var small = BoardModels.named("170").orElseThrow();
    var build =
        new Build(
            small,
            List.of(placed("R1", "1", "a40", "2", "a41"), placed("D1", "a", "b3", "k", "b40")),
            List.of(link("+a3", "a3")));
    BoardPicture picture = draw(build, View.DOWN, "+a3");
    assertThat(picture.leads()).extracting(Lead::pin).containsExactly(new Pin("D1", "a"));
    assertThat(picture.bodies()).extracting(Body::ref).containsExactly("D1");
    assertThat(picture.wires()).isEmpty();
    assertThat(picture.rings()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void theFlatSideOfAnLedIsAtItsCathode(View view) {
    for (List<String> way : List.of(List.of("g12", "g15"), List.of("g15", "g12"))) {
      var build =
          new Build(
              LampBench.EXERCISE.board(),
              List.of(placed("D1", "a", way.get(0), "k", way.get(1))),
              List.of());
      BoardPicture picture = draw(build, view);
      // The dome's path begins at an end of its straight side.
      var start = new Scanner(picture.bodies().get(0).outline()).useDelimiter("[MA ]+");
      Spot flat = new Spot(Double.parseDouble(start.next()), Double.parseDouble(start.next()));
      assertThat(flat.distance(leadAt(picture, "D1", "k")))
          .isLessThan(flat.distance(leadAt(picture, "D1", "a")));
    }
  }

  @Test
  void theSameBuildGivesTheSameDrawing() {
    assertThat(draw(lamp(), View.ALONG, "f12")).isEqualTo(draw(lamp(), View.ALONG, "f12"));
  }

  private static List<Hole> inside(BoardPicture picture, int outline) {
    Box box = picture.outlines().get(outline).box();
    return picture.holes().stream()
        .filter(dot -> Box.around(dot.at(), 1, 1).inside(box))
        .map(Dot::hole)
        .toList();
  }

  private static Spot leadAt(BoardPicture picture, String ref, String pin) {
    return picture.leads().stream()
        .filter(lead -> lead.pin().equals(new Pin(ref, pin)))
        .map(Lead::at)
        .findFirst()
        .orElseThrow();
  }

  private static int strip(BoardModel board, Hole hole) {
    return board.strip(hole).orElseThrow();
  }

  private static Placed placement(Build build, String ref) {
    return build.placed().stream().filter(p -> p.ref().equals(ref)).findFirst().orElseThrow();
  }

  /** The lamp and seeded builds of any parts anywhere on every model. */
  private static List<Build> builds() {
    var random = new Random(17);
    var builds = new ArrayList<Build>(List.of(lamp()));
    for (int i = 0; i < BUILDS; i++) {
      String name = BoardModels.names().get(i % BoardModels.names().size());
      BoardModel board = BoardModels.named(name).orElseThrow();
      var placed = new ArrayList<Placed>();
      for (Part part : LampBench.PARTS) {
        var pins = new ArrayList<String>();
        part.pins().forEach(pin -> pins.addAll(List.of(pin.name(), somewhere(board, random))));
        placed.add(placed(part.ref(), pins.toArray(String[]::new)));
      }
      var links = new ArrayList<Link>();
      for (int n = random.nextInt(6); n > 0; n--) {
        links.add(link(somewhere(board, random), somewhere(board, random)));
      }
      builds.add(new Build(board, placed, links));
    }
    return builds;
  }

  private static String somewhere(BoardModel board, Random random) {
    while (true) {
      boolean rail = random.nextInt(4) == 0;
      String track =
          rail
              ? List.of("+a", "-a", "+j", "-j").get(random.nextInt(4))
              : String.valueOf((char) ('a' + random.nextInt(10)));
      var hole = new Hole(1, track, 1 + random.nextInt(board.columns()));
      if (board.strip(hole).isPresent()) {
        return hole.toString();
      }
    }
  }
}
