package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.lines.Measures;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.marking.ComparedGain;
import org.holewise.engine.reading.Verdict;
import org.holewise.school.sheet.KeptMark.Change;
import org.holewise.school.sheet.KeptMark.Difference;
import org.holewise.school.sheet.KeptMark.Judgement;
import org.holewise.school.sheet.KeptMark.Told;
import org.holewise.school.sheet.MarkSheet.Fit;
import org.holewise.school.sheet.MarkSheet.Look;
import org.holewise.school.sheet.MarkSheet.Next;
import org.holewise.school.sheet.MarkSheet.Suspicion;

/** Puts a mark into the order and words of the teacher's page. */
final class MarkReport {
  private static final int MOST_ACTS = 3;

  private final Exercise exercise;
  private final BenchRecord record;
  private final KeptMark mark;
  private final Pointing pointing;

  MarkReport(Exercise exercise, BenchRecord record, KeptMark mark) {
    this.exercise = exercise;
    this.record = record;
    this.mark = mark;
    this.pointing = new Pointing(record.build());
  }

  MarkSheet sheet() {
    return new MarkSheet(
        Warning.of(mark.cautions()),
        List.of(wiringFits(), readingsFit()),
        look(),
        difference().isEmpty()
            && mark.suspect().filter(s -> !s.what().alike().isEmpty()).isPresent(),
        highlight(),
        mark.next().map(this::next),
        mark.acts().stream().map(Told::text).distinct().limit(MOST_ACTS).toList(),
        mark.points(),
        exercise.marks().wiring(),
        differences(),
        readouts(),
        mark.suspects().stream().map(this::suspicion).toList(),
        mark.findings().stream().map(Told::text).toList(),
        ComparedGain.of(exercise, record).stream()
            .map(sweep -> SweepPlot.of(sweep, mark))
            .toList());
  }

  private Fit wiringFits() {
    if (record.build().isEmpty()) {
      return new Fit("waits", Said.of("sheet.fits.no-layout"));
    }
    int differences = mark.differences().size();
    if (mark.wiringMatches()) {
      return new Fit("fits", Said.of("sheet.fits.wiring"));
    }
    if (mark.points().held()) {
      return new Fit("look", Said.of("sheet.fits.wiring.doubtful"));
    }
    String key = differences == 1 ? "sheet.fits.wiring.one" : "sheet.fits.wiring.differs";
    return new Fit("look", Said.of(key, differences));
  }

  Fit readingsFit() {
    long all = mark.readings().size();
    long missing = mark.readings().stream().filter(r -> r.verdict() == Verdict.MISSING).count();
    long sound = mark.readings().stream().filter(r -> r.verdict().earns()).count();
    if (missing == all) {
      return new Fit("waits", Said.of("sheet.fits.readings.none"));
    }
    if (sound == all) {
      String key =
          mark.points().held() ? "sheet.fits.readings.schematic" : "sheet.fits.readings.all";
      return new Fit("fits", Said.of(key, all));
    }
    return sound + missing == all
        ? new Fit("waits", Said.of("sheet.fits.readings.missing", sound, all))
        : new Fit("look", Said.of("sheet.fits.readings.some", sound, all - missing));
  }

  /** The first repair of the wiring, else the likeliest suspect, else a reading to take again. */
  private Optional<Look> look() {
    return difference()
        .map(MarkReport::look)
        .or(() -> mark.suspect().map(suspect -> Look.at(suspect.text())))
        .or(() -> again().map(read -> Look.at(label(read) + ": " + read.text())));
  }

  private static Look look(Difference difference) {
    return new Look(
        difference.change().text(), difference.or().stream().map(Change::text).toList());
  }

  /** The first reading that was taken and does not fit. */
  Optional<Judgement> again() {
    return mark.readings().stream()
        .filter(read -> !read.verdict().earns() && read.verdict() != Verdict.MISSING)
        .filter(read -> !read.text().isEmpty())
        .findFirst();
  }

  private Highlight highlight() {
    return difference()
        .map(difference -> Highlight.of(difference.change().holes()))
        .or(() -> mark.suspect().map(suspect -> pointing.at(suspect.what())))
        .orElse(Highlight.NONE);
  }

  private Optional<Difference> difference() {
    return mark.differences().stream().findFirst();
  }

  private Next next(Told<NextReading> next) {
    return new Next(next.text(), "extra " + line(exercise, next.what()));
  }

  /** A reading as it is typed, without its value. */
  static String line(Exercise exercise, NextReading next) {
    String usual = exercise.conditions().get(0).name();
    String when = next.when().equals(usual) ? "" : " when " + next.when();
    return Measures.written(next.measure()) + when;
  }

  List<Look> differences() {
    return mark.differences().stream().map(MarkReport::look).toList();
  }

  List<Readout> readouts() {
    return mark.readings().stream()
        .map(read -> Readout.of(read, label(read), typed(read)))
        .toList();
  }

  String label(Judgement read) {
    return label(read.id());
  }

  /** What the exercise calls a reading. */
  String label(String id) {
    return exercise.readings().stream()
        .filter(reading -> reading.id().equals(id))
        .map(Reading::label)
        .findFirst()
        .orElse(id);
  }

  /** What was written down. */
  String typed(Judgement read) {
    var written = record.readings().get(read.id());
    return written == null ? "" : written.text();
  }

  private Suspicion suspicion(Told<Suspect> suspect) {
    return new Suspicion(
        suspect.text(),
        Likelihood.of(suspect.what().probability()),
        numbers(suspect.what().alike().stream().map(i -> i + 1).sorted().toList()));
  }

  /** Neighbours joined to ranges: {@code 1, 3–5}. */
  static String numbers(List<Integer> ascending) {
    var said = new ArrayList<String>();
    int first = 0;
    for (int i = 0; i < ascending.size(); i++) {
      boolean last = i + 1 == ascending.size() || ascending.get(i + 1) != ascending.get(i) + 1;
      if (last) {
        int from = ascending.get(first);
        int to = ascending.get(i);
        said.add(from == to ? String.valueOf(to) : from + (to == from + 1 ? ", " : "–") + to);
        first = i + 1;
      }
    }
    return String.join(", ", said);
  }
}
