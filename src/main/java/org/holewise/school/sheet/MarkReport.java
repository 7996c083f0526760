package org.holewise.school.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.lines.Measures;
import org.holewise.document.picture.Highlight;
import org.holewise.document.text.Messages;
import org.holewise.document.text.Texts;
import org.holewise.engine.board.Finding;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Difference;
import org.holewise.school.sheet.MarkSheet.Fit;
import org.holewise.school.sheet.MarkSheet.Look;
import org.holewise.school.sheet.MarkSheet.Next;
import org.holewise.school.sheet.MarkSheet.Suspicion;
import org.holewise.school.sheet.MarkSheet.Warning;

/** Puts a mark into the order and words of the page. */
public final class MarkReport {
  /** These spoil something or can hurt: power off first, everything else later. */
  private static final List<String> STOPS =
      List.of("far-over-limit", "supply-shorted", "unsolvable", "high-voltage");

  private static final int MOST_ACTS = 3;

  private final Exercise exercise;
  private final BenchRecord record;
  private final Mark mark;
  private final Texts texts;
  private final Pointing pointing;

  private MarkReport(Exercise exercise, BenchRecord record, Mark mark) {
    this.exercise = exercise;
    this.record = record;
    this.mark = mark;
    this.texts = new Texts(Messages.english(), exercise, record.build(), true);
    this.pointing = new Pointing(record.build());
  }

  /** {@code odd}: what was odd about the record before it was marked. */
  public static MarkSheet of(Exercise exercise, BenchRecord record, Mark mark, List<Finding> odd) {
    return new MarkReport(exercise, record, mark).sheet(odd);
  }

  private MarkSheet sheet(List<Finding> odd) {
    var findings = new ArrayList<>(odd);
    findings.addAll(mark.findings());
    return new MarkSheet(
        mark.cautions().stream().map(this::warning).distinct().toList(),
        List.of(wiringFits(), readingsFit()),
        look(),
        difference().isEmpty() && suspect().filter(s -> !s.alike().isEmpty()).isPresent(),
        highlight(),
        mark.diagnosis().next().map(this::next),
        mark.diagnosis().acts().stream().map(texts::act).distinct().limit(MOST_ACTS).toList(),
        mark.marks(),
        exercise.marks().wiring(),
        mark.wiring().differences().stream().map(this::look).toList(),
        mark.readings().stream().map(this::readout).toList(),
        mark.diagnosis().suspects().stream().map(this::suspicion).toList(),
        findings.stream().map(texts::finding).toList());
  }

  private Warning warning(Caution caution) {
    return new Warning(texts.caution(caution), STOPS.contains(caution.kind()));
  }

  private Fit wiringFits() {
    if (record.build().isEmpty()) {
      return new Fit("waits", Said.of("sheet.fits.no-layout"));
    }
    int differences = mark.wiring().differences().size();
    if (mark.wiring().matches()) {
      return new Fit("fits", Said.of("sheet.fits.wiring"));
    }
    if (mark.marks().held()) {
      return new Fit("look", Said.of("sheet.fits.wiring.doubtful"));
    }
    String key = differences == 1 ? "sheet.fits.wiring.one" : "sheet.fits.wiring.differs";
    return new Fit("look", Said.of(key, differences));
  }

  private Fit readingsFit() {
    long all = mark.readings().size();
    long missing = mark.readings().stream().filter(r -> r.verdict() == Verdict.MISSING).count();
    long sound = mark.readings().stream().filter(r -> r.verdict().earns()).count();
    if (missing == all) {
      return new Fit("waits", Said.of("sheet.fits.readings.none"));
    }
    if (sound == all) {
      String key =
          mark.marks().held() ? "sheet.fits.readings.schematic" : "sheet.fits.readings.all";
      return new Fit("fits", Said.of(key, all));
    }
    return sound + missing == all
        ? new Fit("waits", Said.of("sheet.fits.readings.missing", sound, all))
        : new Fit("look", Said.of("sheet.fits.readings.some", sound, all - missing));
  }

  /** The first repair of the wiring, else the likeliest suspect, else a reading to take again. */
  private Optional<Look> look() {
    return difference()
        .map(this::look)
        .or(() -> suspect().map(suspect -> Look.at(texts.suspect(suspect))))
        .or(() -> mark.readings().stream().flatMap(read -> again(read).stream()).findFirst());
  }

  private Look look(Difference difference) {
    return new Look(
        texts.repair(difference.repair()), difference.or().stream().map(texts::repair).toList());
  }

  private Optional<Look> again(Judged read) {
    boolean doubtful = !read.verdict().earns() && read.verdict() != Verdict.MISSING;
    return texts
        .reading(read)
        .filter(advice -> doubtful)
        .map(advice -> Look.at(read.reading().label() + ": " + advice));
  }

  private Highlight highlight() {
    return difference()
        .map(difference -> pointing.at(difference.repair()))
        .or(() -> suspect().map(pointing::at))
        .orElse(Highlight.NONE);
  }

  private Optional<Difference> difference() {
    return mark.wiring().differences().stream().findFirst();
  }

  private Optional<Suspect> suspect() {
    return mark.diagnosis().suspects().stream()
        .findFirst()
        .filter(suspect -> !suspect.likeliest().kind().equals("none"));
  }

  private Next next(NextReading next) {
    String usual = exercise.conditions().get(0).name();
    String when = next.when().equals(usual) ? "" : " when " + next.when();
    return new Next(texts.next(next), "extra " + Measures.written(next.measure()) + when);
  }

  private Readout readout(Judged judged) {
    Written written = record.readings().get(judged.reading().id());
    return Readout.of(judged, written == null ? "" : written.text(), texts);
  }

  private Suspicion suspicion(Suspect suspect) {
    return new Suspicion(
        texts.suspect(suspect),
        Likelihood.of(suspect.probability()),
        numbers(suspect.alike().stream().map(i -> i + 1).sorted().toList()));
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
