package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Points;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Verdict;

/**
 * A mark as its document holds it: the teacher's view. What the document does not carry, such as
 * the parts of a sentence, is empty here. Immutable.
 */
public record KeptMark(
    String engine,
    String priors,
    List<Told<Finding>> findings,
    boolean wiringMatches,
    List<Difference> differences,
    List<Judgement> readings,
    List<Told<Suspect>> suspects,
    Optional<Told<NextReading>> next,
    List<Told<Act>> acts,
    List<Told<Caution>> cautions,
    Points points) {

  /** Something with its sentence, in the words of a teacher. */
  public record Told<T>(T what, String text) {}

  /**
   * A change to the wiring.
   *
   * @param ref the part that is meant; empty for a link
   * @param pin its lead; empty where none is meant
   * @param link number of the link from 0, where one is meant
   * @param holes where it is now, else a hole for each end of what is to be laid
   */
  public record Change(
      Optional<String> ref,
      Optional<String> pin,
      Optional<Integer> link,
      List<Hole> holes,
      String text) {}

  /** One change of the smallest set, and what would do as well. */
  public record Difference(Change change, List<Change> or) {}

  /** A reading judged; {@code text} is empty where it fits. */
  public record Judgement(
      String id,
      Optional<Shown> measured,
      Optional<Expected> wanted,
      Optional<Expected> asBuilt,
      Verdict verdict,
      String text) {}

  /**
   * Reads the document of a mark in the teacher's view. Fields that are not known are passed over:
   * marks are kept for years.
   *
   * @throws IllegalArgumentException where it is no such document
   */
  public static KeptMark read(String document) {
    return KeptMarkReader.read(document);
  }

  /** The likeliest place of a fault; empty where nothing points to one. */
  public Optional<Told<Suspect>> suspect() {
    return suspects.stream()
        .findFirst()
        .filter(told -> !told.what().likeliest().kind().equals("none"));
  }
}
