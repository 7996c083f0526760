package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import org.holewise.document.shape.AnyShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.NumberShape;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.exercise.Measure;

/** The members of a reading that an exercise asks for. */
final class ReadingShape {
  static final Member<String> ID = Member.required("id", Words.ID, "Its name in a record.");
  static final Member<String> LABEL =
      Member.optional("label", TextShape.line(80), "What it is called; the id where left out.");
  static final Member<Double> WEIGHT =
      Member.optional("weight", new NumberShape(0, 1000, false), "Its share of the marks.")
          .otherwise(1);
  static final Member<List<Spotted<Place>>> BAND =
      Member.optional(
          "band",
          new ListShape<>(AnyShape.quantity(), 2, 2, false),
          "The teacher's own limits, lowest first.");

  static final Member<List<Spotted<Values>>> READINGS =
      Member.optional(
          "readings",
          new ListShape<>(new RecordShape(members(), Measure.KEYS, List.of()), 0, 100, false),
          "The readings to take.");

  private ReadingShape() {}

  private static List<Member<?>> members() {
    List<Member<?>> members = new ArrayList<>(List.of(ID, LABEL));
    members.addAll(Measures.AT_PINS.members());
    members.addAll(List.of(WEIGHT, BAND));
    return members;
  }
}
