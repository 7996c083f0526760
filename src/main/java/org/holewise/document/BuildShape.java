package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.MapShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.board.Hole;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Written;

/** The members of a build and their limits: the table from which reader and schema come. */
final class BuildShape {
  private static final WrittenShape WRITTEN = new WrittenShape(80);

  static final Member<String> EXERCISE =
      Member.optional("exercise", TextShape.line(64), "Slug of the exercise it was built for.");
  static final Member<String> BOARD =
      Member.optional(
          "board", ExerciseShape.BOARDS, "The board model; the exercise's where left out.");
  static final Member<String> METER =
      Member.optional(
          "meter", ExerciseShape.METERS, "The meter model; the exercise's where left out.");

  static final Member<String> REF =
      Member.required("ref", TextShape.line(32), "Reference of a part of the exercise.");
  static final Member<Map<String, Spotted<Hole>>> HOLES =
      Member.optional(
          "holes",
          new MapShape<>(TextShape.line(16), Words.ITS_HOLE, 64),
          "The hole of each lead, by the name of the pin.");
  static final Member<Hole> PIN1 =
      Member.optional(
          "pin1",
          Words.ITS_HOLE,
          "Hole of a chip's pin 1, given instead of holes: in row e with its notch towards column 1,"
              + " in row f turned round.");
  static final Member<String> MARKED =
      Member.optional("marked", TextShape.line(40), "What was read off the part.");
  static final Member<List<Spotted<Values>>> PLACED =
      Member.optional(
          "placed",
          new ListShape<>(
              new RecordShape(
                  List.of(REF, HOLES, PIN1, MARKED), List.of("holes", "pin1"), List.of()),
              0,
              200,
              false),
          "The parts placed; left out together with links, there is no layout.");
  static final Member<List<Spotted<List<Spotted<Hole>>>>> LINKS =
      Member.optional(
          "links",
          new ListShape<>(new ListShape<>(Words.ITS_HOLE, 2, 2, false), 0, 300, false),
          "Pieces of wire, each between two holes.");
  static final Member<Map<String, Spotted<Written>>> READINGS =
      Member.optional(
          "readings",
          new MapShape<>(TextShape.line(64), WRITTEN, 200),
          "What was read, by id; a number is in SI units.");

  static final Member<String> EXTRA_ID = Member.required("id", Words.ID, "Its own name.");
  static final Member<Written> VALUE = Member.required("value", WRITTEN, "What was read.");
  static final Member<List<Spotted<Values>>> EXTRA =
      Member.optional(
          "extra",
          new ListShape<>(new RecordShape(extra(), Measure.KEYS, List.of()), 0, 100, false),
          "Readings taken because they were asked for.");

  static final RecordShape WHOLE =
      RecordShape.of(List.of(EXERCISE, BOARD, METER, PLACED, LINKS, READINGS, EXTRA));

  private BuildShape() {}

  private static List<Member<?>> extra() {
    List<Member<?>> members = new ArrayList<>(List.of(EXTRA_ID));
    members.addAll(Measures.ANYWHERE.members());
    members.add(VALUE);
    return members;
  }
}
