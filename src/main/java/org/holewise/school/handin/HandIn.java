package org.holewise.school.handin;

import java.time.Instant;
import java.util.List;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.Person;

/**
 * What a bench handed in. Immutable.
 *
 * @param number counts the bench's hand-ins, from 1
 * @param lines the build as typed lines
 * @param members who worked at the bench then
 */
public record HandIn(
    long id, long bench, int number, String lines, Person by, List<Person> members, Instant at) {

  public BenchRecord record(Exercise exercise) {
    return BuildLines.read(lines, exercise).record();
  }
}
