package org.holewise.document;

import java.util.List;
import java.util.Map;
import org.holewise.document.shape.AnyShape;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.FlagShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.MapShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.NumberShape;
import org.holewise.document.shape.Place;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Spotted;
import org.holewise.document.shape.TextShape;
import org.holewise.document.shape.Values;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Meters;

/** The members of an exercise and their limits: the table from which reader and schema come. */
final class ExerciseShape {
  static final ChoiceShape BOARDS = new ChoiceShape(BoardModels.names(), "unknown-board");
  static final ChoiceShape METERS = new ChoiceShape(Meters.names(), "unknown-meter");
  static final String USUAL_METER = "hand-2000";

  /** A mark of more would take longer than anybody waits; a board holds no more. */
  static final int MOST_PARTS = 60;

  private static final TextShape<String> NAME = TextShape.line(40);

  static final Member<String> SLUG =
      Member.required("slug", Words.SLUG, "Its short name in addresses.");
  static final Member<String> TITLE =
      Member.optional("title", TextShape.line(120), "Its title; the slug where left out.");
  static final Member<String> AIM =
      Member.optional("aim", TextShape.text(1000), "What it is for, in a sentence or two.");
  static final Member<List<Spotted<String>>> NOTES =
      Member.optional(
          "notes",
          new ListShape<>(TextShape.prose(1000), 0, 20, false),
          "Teaching notes; not used for marking.");
  static final Member<String> BOARD = Member.required("board", BOARDS, "The board model.");
  static final Member<String> METER =
      Member.optional("meter", METERS, "The meter model.").otherwise(USUAL_METER);
  static final Member<List<Spotted<DeclaredPart>>> PARTS =
      Member.required(
          "parts", new ListShape<>(new PartShape(), 1, MOST_PARTS, false), "The parts.");
  static final Member<Map<String, Spotted<List<Spotted<Pin>>>>> NETS =
      Member.required(
          "nets",
          new MapShape<>(NAME, new ListShape<>(Words.ITS_PIN, 1, 400, true), 200),
          "Nets by name, each the pins that it joins; nets of one pin may be left out.");

  static final Member<String> CONDITION_NAME = Member.required("name", NAME, "Its name.");
  static final Member<Map<String, Spotted<Place>>> SET =
      Member.optional(
          "set",
          new MapShape<>(Words.REFERENCE, AnyShape.object(), 100),
          "By ref: fields of a part that have another value in this condition.");
  static final Member<Double> TEMPERATURE =
      Member.optional("temperature", new NumberShape(-40, 125, false), "Of the surroundings (°C).")
          .otherwise(25);
  static final Member<Pin> CLOCK =
      Member.optional("clock", Words.ITS_PIN, "The pin that is clocked by hand.");
  static final Member<List<Spotted<Values>>> CONDITIONS =
      Member.optional(
          "conditions",
          new ListShape<>(
              new RecordShape(
                  List.of(CONDITION_NAME, SET, TEMPERATURE, CLOCK), List.of(), List.of()),
              1,
              20,
              false),
          "States in which readings are taken; the first is the default. Left out, there is one"
              + " named normal.");

  static final Member<Boolean> SERIES_ORDER =
      flag("seriesOrder", "Parts in series may stand in any order.");
  static final Member<Boolean> EQUAL_PARTS =
      flag("equalParts", "Parts that are alike may trade places.");
  static final Member<Boolean> EXTRA_LINKS =
      flag("extraLinks", "Links that change no net are no difference.");
  static final Member<Boolean> HIGH_VOLTAGE =
      Member.optional(
              "highVoltage",
              new FlagShape(),
              "With the head of department's leave, two points may be more than 30 V apart.")
          .otherwise(false);
  static final Member<Values> ALLOW =
      Member.optional(
          "allow",
          RecordShape.of(List.of(SERIES_ORDER, EQUAL_PARTS, EXTRA_LINKS, HIGH_VOLTAGE)),
          "What a build may do otherwise than the schematic, and what was given leave.");

  static final Member<Double> FOR_WIRING = points("wiring");
  static final Member<Double> FOR_READINGS = points("readings");
  static final Member<Values> MARKS =
      Member.optional(
          "marks",
          RecordShape.of(List.of(FOR_WIRING, FOR_READINGS)),
          "The scheme of marks; 60 and 40 where left out.");

  static final RecordShape WHOLE =
      RecordShape.of(
          List.of(
              SLUG,
              TITLE,
              AIM,
              NOTES,
              BOARD,
              METER,
              PARTS,
              NETS,
              CONDITIONS,
              ReadingShape.READINGS,
              ALLOW,
              MARKS));

  private ExerciseShape() {}

  private static Member<Boolean> flag(String name, String meaning) {
    return Member.optional(name, new FlagShape(), meaning).otherwise(true);
  }

  private static Member<Double> points(String name) {
    return Member.required(name, new NumberShape(0, 1000, true), "Marks for the " + name + ".");
  }
}
