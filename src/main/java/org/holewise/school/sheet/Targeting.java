package org.holewise.school.sheet;

import java.util.List;
import java.util.Optional;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.BoardModel;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.part.Pin;
import org.holewise.school.sheet.KeptMark.Change;
import org.holewise.school.sheet.KeptMark.Difference;

/** Finds the first thing that a student should look at, in sentences for students. */
final class Targeting {
  private final Texts texts;
  private final Pointing pointing;
  private final MarkReport report;
  private final BoardModel board;

  Targeting(Exercise exercise, BenchRecord record, MarkReport report) {
    this.texts = new Texts(Messages.english(), exercise, record.build(), false);
    this.pointing = new Pointing(record.build());
    this.report = report;
    this.board = record.build().map(Build::board).orElse(exercise.board());
  }

  /** The first difference of the wiring, else the likeliest suspect, else a doubtful reading. */
  Optional<Target> first(KeptMark mark) {
    return mark.differences().stream()
        .findFirst()
        .map(this::of)
        .or(() -> mark.suspect().map(suspect -> of(suspect.what())))
        .or(() -> report.again().map(read -> ofReading(read.id(), doubted(read))));
  }

  private String doubted(KeptMark.Judgement read) {
    return report.label(read) + ": " + read.text();
  }

  private Target of(Difference difference) {
    Change change = difference.change();
    List<String> others = difference.or().stream().map(Change::text).toList();
    if (change.ref().isPresent()) {
      String ref = change.ref().get();
      Place place =
          change
              .pin()
              .<Place>map(pin -> new Place.OfLead(new Pin(ref, pin)))
              .orElseGet(() -> new Place.OfPart(ref));
      boolean seated =
          !(place instanceof Place.OfLead lead) || !pointing.lead(lead.pin()).isEmpty();
      return new Target(
          "part",
          ref,
          place,
          seated ? onBoard(pointing.part(ref)) : List.of(),
          change.holes(),
          change.text(),
          others);
    }
    return change
        .link()
        .map(link -> ofLink(link, change, others))
        .orElseGet(() -> ofMissing(change, others));
  }

  private Target ofLink(int link, Change change, List<String> others) {
    return new Target(
        "link",
        String.valueOf(link + 1),
        new Place.OfLink(link),
        onBoard(pointing.link(link)),
        change.holes(),
        change.text(),
        others);
  }

  private static Target ofMissing(Change change, List<String> others) {
    return new Target(
        "missing", "", new Place.Nowhere(), change.holes(), change.holes(), change.text(), others);
  }

  private Target of(Suspect suspect) {
    List<Hole> holes = onBoard(pointing.holes(suspect));
    String sentence = texts.suspect(suspect);
    Place place = suspect.place();
    if (place instanceof Place.OfReading reading) {
      return ofReading(reading.id(), sentence);
    }
    if (place instanceof Place.OfLead lead) {
      return at("part", lead.pin().ref(), place, pointing.part(lead.pin().ref()), holes, sentence);
    }
    if (place instanceof Place.OfPart part) {
      return at("part", part.ref(), place, holes, holes, sentence);
    }
    if (place instanceof Place.OfParts parts) {
      return at("part", parts.one() + ", " + parts.other(), place, holes, holes, sentence);
    }
    if (place instanceof Place.OfReadings readings) {
      return ofReading(readings.one(), sentence);
    }
    if (place instanceof Place.OfSupply supply) {
      return at("part", supply.ref(), place, holes, holes, sentence);
    }
    if (place instanceof Place.OfLink link) {
      return at("link", String.valueOf(link.link() + 1), place, holes, holes, sentence);
    }
    return at(place instanceof Place.OfRail ? "rail" : "strips", "", place, holes, holes, sentence);
  }

  private Target at(
      String kind, String name, Place place, List<Hole> around, List<Hole> holes, String said) {
    return new Target(kind, name, place, onBoard(around), holes, said, List.of());
  }

  private Target ofReading(String id, String sentence) {
    return new Target(
        "reading",
        report.label(id),
        new Place.OfReading(id),
        List.of(),
        List.of(),
        sentence,
        List.of());
  }

  /** Only holes that the board has: a slip may name others. */
  private List<Hole> onBoard(List<Hole> holes) {
    return holes.stream().filter(hole -> board.strip(hole).isPresent()).toList();
  }
}
