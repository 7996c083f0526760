package org.holewise.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.holewise.document.ExerciseDocument;
import org.holewise.drawing.check.Check;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.drawing.sheet.Drawing;
import org.holewise.drawing.sheet.Drawing.Figure;
import org.holewise.drawing.sheet.Drawn;
import org.holewise.drawing.sheet.Drawn.Undrawable;
import org.holewise.drawing.sheet.Drawn.Why;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.exercise.Seat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An author's places hold; what cannot be drawn so is said. */
@Tag("fast")
class SeatsTest {
  private static final int CELL = 40;

  private static Schematic divider(Map<String, Seat> seats) {
    var plain = FirstCourse.all().get("divider-loaded");
    return new Schematic(plain.parts(), plain.nets(), seats);
  }

  private static Figure figure(Drawing drawing, String ref) {
    return drawing.figures().stream().filter(f -> f.ref().equals(ref)).findFirst().orElseThrow();
  }

  /** The place of the first pin from the middle of the cell. */
  private static Point pin(Drawing drawing, String ref, int column, int row) {
    return figure(drawing, ref).ends().get(0).at().plus(-column * CELL, -row * CELL);
  }

  @Test
  void allSeatedStandExactlyThere() {
    var seats =
        Map.of(
            "B1", new Seat(1, 4, 90, false),
            "R1", new Seat(4, 2, 90, false),
            "R2", new Seat(4, 6, 270, false),
            "R3", new Seat(7, 4, 0, true));
    var drawing = DrawingLawsTest.drawn(divider(seats), SymbolStyle.IEC);
    assertThat(pin(drawing, "B1", 1, 4)).isEqualTo(new Point(0, -30));
    assertThat(pin(drawing, "R1", 4, 2)).isEqualTo(new Point(0, -30));
    assertThat(pin(drawing, "R2", 4, 6)).isEqualTo(new Point(0, 30));
    assertThat(pin(drawing, "R3", 7, 4)).isEqualTo(new Point(30, 0));
    assertThat(Check.faults(divider(seats), drawing)).isEmpty();
  }

  @Test
  void whatHasNoSeatGivesWay() {
    var seats = Map.of("R3", new Seat(6, 5, 0, false));
    var drawing = DrawingLawsTest.drawn(divider(seats), SymbolStyle.ANSI);
    assertThat(pin(drawing, "R3", 6, 5)).isEqualTo(new Point(-30, 0));
    assertThat(drawing.figures()).hasSize(4);
  }

  @Test
  void anyOnePartOfAnyCircuitMayBeSeatedAndTheRestIsDrawnOrRefused() {
    int drawn = 0;
    int asked = 0;
    for (Schematic plain : FirstCourse.all().values()) {
      var ref = plain.parts().get(plain.parts().size() - 1).ref();
      var seated =
          new Schematic(plain.parts(), plain.nets(), Map.of(ref, new Seat(8, 6, 0, false)));
      asked++;
      if (SchematicDrawing.of(seated, SymbolStyle.IEC) instanceof Drawn.Done done) {
        drawn++;
        assertThat(Check.faults(seated, done.drawing())).isEmpty();
      }
    }
    assertThat(drawn).isGreaterThan(asked * 9 / 10);
  }

  @Test
  void twoOnOneSeatAreNamed() {
    var seats = Map.of("R1", new Seat(3, 3, 90, false), "R2", new Seat(3, 3, 0, false));
    assertThat(SchematicDrawing.of(divider(seats), SymbolStyle.IEC))
        .isInstanceOfSatisfying(
            Undrawable.class,
            undrawable -> {
              assertThat(undrawable.why()).isEqualTo(Why.OVERLAP);
              assertThat(undrawable.parts()).contains("R1", "R2");
            });
  }

  @Test
  void anExerciseSaysSeatsBesideItsParts() {
    var exercise =
        ExerciseDocument.yaml(
                """
                slug: seated
                board: "830"
                parts:
                  - {ref: B1, kind: battery, volts: 6}
                  - {ref: R1, kind: resistor, ohms: 1k, drawn: {at: [4, 3], turn: 90, mirror: true}}
                nets: {supply: [B1.+, R1.1], return: [B1.-, R1.2]}
                readings: [{id: v, volts: [R1.1, R1.2]}]
                """)
            .orThrow()
            .exercise();
    assertThat(exercise.seats()).isEqualTo(Map.of("R1", new Seat(4, 3, 90, true)));
    assertThat(Schematic.of(exercise).seats()).isEqualTo(exercise.seats());
    assertThat(SchematicDrawing.of(exercise, SymbolStyle.IEC)).isInstanceOf(Drawn.Done.class);
  }

  @Test
  void aSeatThatCannotBeReadIsNamedByItsPlace() {
    var read =
        ExerciseDocument.yaml(
            """
            slug: seated
            board: "830"
            parts:
              - {ref: B1, kind: battery, volts: 6, drawn: {at: [4]}}
              - {ref: R1, kind: resistor, ohms: 1k, drawn: {at: [4, -1], turn: 45, mirror: 1}}
            nets: {supply: [B1.+, R1.1], return: [B1.-, R1.2]}
            readings: [{id: v, volts: [R1.1, R1.2]}]
            """);
    assertThat(read.problems())
        .extracting(problem -> problem.at())
        .isEqualTo(
            List.of(
                "/parts/0/drawn/at",
                "/parts/1/drawn/at/1",
                "/parts/1/drawn/turn",
                "/parts/1/drawn/mirror"));
  }
}
