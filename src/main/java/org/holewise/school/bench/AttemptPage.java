package org.holewise.school.bench;

import java.util.List;
import java.util.Optional;
import org.holewise.school.handin.Overruling;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.MarkSheet.Next;
import org.holewise.school.sheet.Moment;
import org.holewise.school.sheet.Said;
import org.holewise.school.sheet.SchematicSheet;
import org.holewise.school.sheet.StudentSheet;

/**
 * One hand-in as its students see it.
 *
 * @param sheet what its mark says as far as the hints go; empty while it is being marked
 * @param ask the reading to take next, while the session is open and its results are not out
 * @param waits whether an answer is still being marked
 * @param typed the answer that was refused, {@code refused} why
 * @param decided what a teacher decided about the marks, once they are released
 */
record AttemptPage(
    long id,
    int bench,
    int number,
    String title,
    Moment at,
    List<String> members,
    BenchView board,
    SchematicSheet schematic,
    Optional<StudentSheet> sheet,
    Optional<Next> ask,
    List<String> answers,
    boolean open,
    boolean released,
    boolean waits,
    String key,
    String typed,
    Optional<Said> refused,
    Optional<Overruling> decided) {}
