package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.diagnosis.Suspect.Guess;
import org.holewise.engine.marking.Points;
import org.holewise.engine.part.Pin;
import org.holewise.school.sheet.KeptMark;
import org.holewise.school.sheet.KeptMark.Change;
import org.holewise.school.sheet.KeptMark.Difference;
import org.holewise.school.sheet.KeptMark.Told;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How near a mark came to the cause that was found. */
@Tag("fast")
class ForetoldTest {

  private static final Suspect LEAD =
      suspect(new Place.OfLead(new Pin("R1", "2")), "open-contact", "f12", 0.6);
  private static final Suspect NONE = suspect(new Place.Nowhere(), "none", "", 0.3);
  private static final Suspect LINK = suspect(new Place.OfLink(1), "open-contact", "a21", 0.1);

  private static final Difference DIFFERENCE =
      new Difference(lead("D1", "a", "c16"), List.of(lead("R1", "1", "b10"), link(0, "a11")));

  private static Suspect suspect(Place place, String kind, String hole, double probability) {
    var holes = Hole.read(hole).stream().toList();
    return new Suspect(
        place,
        List.of(new Guess(kind, holes, Double.NaN, "", probability)),
        probability,
        List.of());
  }

  private static Change lead(String ref, String pin, String hole) {
    var at = Hole.read(hole).stream().toList();
    return new Change(Optional.of(ref), Optional.of(pin), Optional.empty(), at, "");
  }

  private static Change link(int link, String hole) {
    var at = Hole.read(hole).stream().toList();
    return new Change(Optional.empty(), Optional.empty(), Optional.of(link), at, "");
  }

  private static KeptMark mark(List<Difference> differences, Suspect... suspects) {
    return new KeptMark(
        "1",
        "start",
        List.of(),
        differences.isEmpty(),
        differences,
        List.of(),
        List.of(suspects).stream().map(suspect -> new Told<>(suspect, "")).toList(),
        Optional.empty(),
        List.of(),
        List.of(),
        new Points(60, 0, 100, false));
  }

  private static Foretold foretold(KeptMark mark, String kind, String place) {
    return Foretold.of(mark, new Cause(kind, place, ""));
  }

  private static Foretold is(int pointed, double said, boolean wasSo) {
    return new Foretold(Optional.of(pointed), Optional.of(said), Optional.of(wasSo));
  }

  @Test
  void isRightWhereTheFirstSuspectWasThePlace() {
    var mark = mark(List.of(), LEAD, NONE, LINK);
    assertThat(foretold(mark, "open-contact", "R1.2")).isEqualTo(is(1, 0.6, true));
    assertThat(foretold(mark, "wrong-hole", "r1.2")).isEqualTo(is(1, 0.6, true));
    assertThat(foretold(mark, "poor-contact", "R1")).isEqualTo(is(1, 0.6, true));
    assertThat(foretold(mark, "open-contact", "f12")).isEqualTo(is(1, 0.6, true));
  }

  @Test
  void isWrongWhereItWasAnotherPlace() {
    var mark = mark(List.of(), LEAD, NONE, LINK);
    assertThat(foretold(mark, "open-contact", "link 2")).isEqualTo(is(2, 0.6, false));
    assertThat(foretold(mark, "dead-part", "R1")).isEqualTo(is(0, 0.6, false));
    assertThat(foretold(mark, "open-contact", "R10.2")).isEqualTo(is(0, 0.6, false));
  }

  @Test
  void isTheWiringFirstWithWhatWouldMendItAsWell() {
    var mark = mark(List.of(DIFFERENCE), NONE, LEAD);
    assertThat(foretold(mark, "column-off", "D1.a")).isEqualTo(is(1, 0.3, true));
    assertThat(foretold(mark, "column-off", "link 1")).isEqualTo(is(3, 0.3, true));
    assertThat(foretold(mark, "open-contact", "R1.2")).isEqualTo(is(4, 0.3, false));
  }

  @Test
  void isWrongWhereItSuspectedSomethingBehindAFaultThatTheRecordShows() {
    var mark = mark(List.of(DIFFERENCE), LEAD, NONE);
    assertThat(foretold(mark, "column-off", "D1.a")).isEqualTo(is(1, 0.6, false));
  }

  @Test
  void isRightAboutNothingWhereItSuspectedNothing() {
    assertThat(foretold(mark(List.of(), NONE, LEAD), "none", "")).isEqualTo(is(1, 0.3, true));
    assertThat(foretold(mark(List.of(), LEAD, NONE), "none", "")).isEqualTo(is(2, 0.6, false));
    assertThat(foretold(mark(List.of(), NONE, LEAD), "open-contact", "R1.2"))
        .isEqualTo(is(2, 0.3, false));
  }

  @Test
  void isNotKnownWhereTheCauseNamesNoPlace() {
    assertThat(foretold(mark(List.of(), LEAD), "touching", "")).isEqualTo(Foretold.NOTHING);
  }

  @Test
  void findsALinkToAddByItsKind() {
    var add = new Change(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), "");
    var mark = mark(List.of(new Difference(add, List.of())), NONE);
    assertThat(foretold(mark, "link-missing", "return")).isEqualTo(is(1, 0.3, true));
    assertThat(foretold(mark, "link-too-many", "link 1")).isEqualTo(is(0, 0.3, true));
  }
}
