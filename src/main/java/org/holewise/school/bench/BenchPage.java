package org.holewise.school.bench;

import java.util.List;
import java.util.Optional;
import org.holewise.school.handin.Power;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.ExerciseSheet;
import org.holewise.school.sheet.GateAnswer.Stop;
import org.holewise.school.sheet.Moment;
import org.holewise.school.sheet.Said;
import org.holewise.school.sheet.SchematicSheet;
import org.holewise.school.sheet.Warning;

/** The working page of a bench: what to build, the gate before power, what to read. */
record BenchPage(
    long id,
    long person,
    int number,
    List<String> partners,
    boolean open,
    ExerciseSheet sheet,
    SchematicSheet schematic,
    List<PartFields> parts,
    List<Fields> links,
    Fields newLink,
    List<ReadingFields> readings,
    List<Fields> extras,
    Fields newExtra,
    Line line,
    String key,
    BenchView bench,
    List<Note> notes,
    GateView gate,
    List<Attempt> attempts,
    Optional<Moment> waitsSince,
    Optional<Said> why,
    List<Note> summary,
    List<Replaced> replaced) {

  /**
   * An entry with its fields.
   *
   * @param was the text that is kept, {@code base} its revision
   * @param problem why it cannot be read; empty where it can
   */
  record Fields(
      String name, String title, String was, long base, List<FieldView> fields, String problem) {

    public FieldView first() {
      return fields.get(0);
    }
  }

  /** A field under its name in the form; {@code wrong} where it has to be put right. */
  record FieldView(
      String name, String part, String label, String text, int longest, boolean wrong) {}

  record PartFields(
      String ref, String kind, String value, Fields entry, Optional<FieldView> marked) {}

  /** {@code words}: what may be written, where it is a word. */
  record ReadingFields(
      String id,
      String label,
      String how,
      String when,
      String unit,
      List<String> words,
      Fields entry) {}

  /** The box for typed lines, and what is wrong with what stays in it. */
  record Line(String text, List<Said> problems) {}

  /** Something to look at, with the field that it is about. */
  record Note(String field, String title, String text) {}

  /** The gate before power: how it stands, and what speaks against switching on. */
  record GateView(Power power, List<Stop> stops, List<Warning> care, List<String> missing) {

    public boolean go() {
      return power == Power.ON;
    }

    /** Whether asking is the next thing to do. */
    public boolean asks() {
      return !go() && power != Power.WAITS_FOR_TEACHER;
    }

    /** Its shape: fits, stop or waits. */
    public String sign() {
      return switch (power) {
        case ON -> "fits";
        case STOPPED, CHANGED -> "stop";
        case NOT_ASKED, WAITS_FOR_TEACHER -> "waits";
      };
    }
  }

  /** A partner's text that a save replaced. */
  record Replaced(String name, String title, String text, String by) {}

  public boolean hasPartners() {
    return !partners.isEmpty();
  }
}
