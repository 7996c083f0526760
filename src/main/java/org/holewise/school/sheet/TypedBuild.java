package org.holewise.school.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.document.BuildDocument;
import org.holewise.document.RecordFindings;
import org.holewise.document.lines.BuildLines;
import org.holewise.document.lines.Line;
import org.holewise.document.lines.Sheet;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Read;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.BuildCheck;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;

/**
 * What was typed or pasted into the box, as read: lines, or a whole build document.
 *
 * @param record what could be read; empty where a document is malformed
 * @param notes what to look at, in the order of the lines
 */
public record TypedBuild(String text, Optional<BenchRecord> record, List<Note> notes) {

  /** More than any bench has. */
  public static final int LONGEST = 50_000;

  private static final Pattern YAML_BUILD = Pattern.compile("(?m)^(placed|links|readings):");

  /** True of every build that is not whole yet, and no news while one types. */
  private static final List<String> NOT_YET = List.of("part-missing", "layout-missing");

  /**
   * Something to look at.
   *
   * @param line from 1; 0 where it is about no line
   * @param quoted the line, or the place in the document
   * @param wrong whether it must be put right before the build can be marked
   */
  public record Note(int line, String quoted, String text, boolean wrong) {}

  public static TypedBuild read(String text, Exercise exercise) {
    if (text.length() > LONGEST) {
      var note = new Note(0, "", Messages.english().say("line.text-too-long", LONGEST), true);
      return new TypedBuild(text, Optional.empty(), List.of(note));
    }
    if (text.stripLeading().startsWith("{")) {
      return document(
          text, BuildDocument.json(text.getBytes(StandardCharsets.UTF_8), exercise), exercise);
    }
    return YAML_BUILD.matcher(text).find()
        ? document(text, BuildDocument.yaml(text, exercise), exercise)
        : lines(text, exercise);
  }

  /** Whether it can be marked. */
  public boolean ready() {
    return record.isPresent() && wrong().isEmpty();
  }

  public List<Note> wrong() {
    return notes.stream().filter(Note::wrong).toList();
  }

  public List<Note> odd() {
    return notes.stream().filter(note -> !note.wrong()).toList();
  }

  /** The numbers of the lines that must be put right. */
  public List<Integer> wrongLines() {
    return wrong().stream().map(Note::line).filter(line -> line > 0).toList();
  }

  private static TypedBuild lines(String text, Exercise exercise) {
    Sheet sheet = BuildLines.read(text, exercise);
    var notes = new ArrayList<Note>();
    for (Line line : sheet.lines()) {
      line.problem()
          .map(problem -> problem.text(Messages.english()))
          .ifPresent(said -> notes.add(new Note(line.number(), line.text().strip(), said, true)));
    }
    for (Finding finding : findings(sheet.record(), exercise)) {
      int line = sheet.lineOf(finding.at()).orElse(0);
      String quoted = line == 0 ? "" : sheet.lines().get(line - 1).text().strip();
      notes.add(new Note(line, quoted, said(finding, sheet.record(), exercise), false));
    }
    notes.sort(Comparator.comparingInt(Note::line));
    return new TypedBuild(text, Optional.of(sheet.record()), List.copyOf(notes));
  }

  private static TypedBuild document(String text, Read<BenchRecord> read, Exercise exercise) {
    if (read instanceof Read.Ok<BenchRecord> ok) {
      List<Note> notes =
          findings(ok.value(), exercise).stream()
              .map(f -> new Note(0, f.at(), said(f, ok.value(), exercise), false))
              .toList();
      return new TypedBuild(text, Optional.of(ok.value()), notes);
    }
    List<Note> notes = read.problems().stream().map(TypedBuild::note).toList();
    return new TypedBuild(text, Optional.empty(), notes);
  }

  private static Note note(Problem problem) {
    return new Note(0, problem.at(), problem.text(), true);
  }

  private static String said(Finding finding, BenchRecord record, Exercise exercise) {
    return new Texts(Messages.english(), exercise, record.build(), true).finding(finding);
  }

  private static List<Finding> findings(BenchRecord record, Exercise exercise) {
    var findings = new ArrayList<>(RecordFindings.of(exercise, record));
    record
        .build()
        .ifPresent(build -> findings.addAll(BuildCheck.findings(build, exercise.parts())));
    findings.removeIf(finding -> NOT_YET.contains(finding.kind()));
    return findings;
  }
}
