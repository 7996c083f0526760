package org.holewise.school.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.document.MarkRequest;
import org.holewise.document.RequestDocument;
import org.holewise.document.shape.Read;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.session.HintStep;
import org.holewise.school.trial.StartingPoint;

/** A record and the document of its mark: every golden mark, every build of the trial. */
record MarkedCase(String name, Exercise exercise, BenchRecord record, String document) {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");

  static List<MarkedCase> all() {
    var all = new ArrayList<MarkedCase>(golden());
    for (String slug : Shipped.SLUGS) {
      for (StartingPoint start : Shipped.starts(slug)) {
        all.add(typed(slug + " " + start.name(), slug, start.lines()));
      }
    }
    return all;
  }

  static MarkedCase typed(String name, String slug, String lines) {
    var mark = Shipped.mark(slug, lines);
    return new MarkedCase(
        name,
        Shipped.exercise(slug),
        Shipped.record(slug, lines),
        Shipped.document(slug, lines, mark));
  }

  private static List<MarkedCase> golden() {
    try (var files = Files.list(GOLDEN)) {
      return files
          .filter(file -> file.toString().endsWith(".mark.json"))
          .sorted()
          .map(MarkedCase::golden)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MarkedCase golden(Path mark) {
    try {
      String name = mark.getFileName().toString().replace(".mark.json", "");
      byte[] request = Files.readAllBytes(GOLDEN.resolve(name + ".request.json"));
      var read = new RequestDocument(slug -> Optional.of(Shipped.exercise(slug))).read(request);
      MarkRequest asked = ((Read.Ok<MarkRequest>) read).value();
      String kept = Files.readString(mark, StandardCharsets.UTF_8);
      return new MarkedCase(name, asked.exercise(), asked.record(), kept);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  KeptMark kept() {
    return KeptMark.read(document);
  }

  StudentSheet sheet(HintStep hint) {
    return StudentSheet.of(exercise, record, kept(), hint, false);
  }

  StudentSheet released() {
    return StudentSheet.of(exercise, record, kept(), HintStep.VERDICTS, true);
  }

  @Override
  public String toString() {
    return name;
  }
}
