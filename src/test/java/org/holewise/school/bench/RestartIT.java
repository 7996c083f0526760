package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.session.Bench;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was typed is there after the server was started again. */
class RestartIT {

  @TempDir private Path data;

  @Test
  void losesNoDraft() {
    Bench bench;
    try (var school = RunningSchool.plain(data)) {
      var lesson = new Lesson(school, HintStep.PLACE, false);
      bench = lesson.at(1, lesson.wren);
      String path = "/bench/" + bench.id();
      BenchForm.on(lesson.in(lesson.wren), path)
          .typeLayout()
          .type("reading:supply", "5.01 V")
          .sendTo(path + "/draft");
    }
    try (var school = RunningSchool.plain(data)) {
      assertThat(school.part(Drafts.class).of(bench))
          .extracting(DraftEntry::text)
          .contains("1=b10 2=b14", "a24 -a24", "5.01 V");
    }
  }
}
