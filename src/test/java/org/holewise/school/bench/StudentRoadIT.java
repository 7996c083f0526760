package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the card to the released result, with forms and links alone. */
class StudentRoadIT {

  @TempDir private Path data;

  @Test
  void leadsFromTodayToTheResultWithoutAScript() {
    try (var school = RunningSchool.plain(data)) {
      var lesson = new Lesson(school, HintStep.PLACE, false);
      var wren = lesson.in(lesson.wren);
      String bench = takesAPlace(wren, lesson);
      asksTheGate(wren, bench);
      String attempt = handsIn(wren, bench);
      answersAndLooksAgain(wren, attempt);
      assertThat(wren.opens("/today").body()).contains("Results are not released yet.");
      lesson.sessions().release(lesson.teacher, lesson.session().id());
      assertThat(wren.opens("/today").body()).containsPattern("\\d+ of 100 marks");
      assertThat(wren.opens(attempt).body()).contains("Your marks", "Expected");
    }
  }

  private static String takesAPlace(Visitor wren, Lesson lesson) {
    assertThat(wren.opens("/today").body()).contains("Choose your bench", "nobody yet");
    var taken = wren.sends("/today", "/today/" + lesson.session().id() + "/bench", "number", "2");
    assertThat(taken.statusCode()).isEqualTo(303);
    assertThat(wren.opens("/today").body()).contains("Go on at bench 2");
    return Visitor.target(taken);
  }

  private static void asksTheGate(Visitor wren, String bench) {
    assertThat(wren.opens(bench).body()).contains("Leave the power off", "Long lead");
    var asked = BenchForm.on(wren, bench).typeLayout().sendTo(bench + "/gate");
    assertThat(Visitor.target(asked)).isEqualTo(bench + "#gate");
    assertThat(wren.opens(bench).body()).contains("You may switch on");
  }

  private static String handsIn(Visitor wren, String bench) {
    var form =
        BenchForm.on(wren, bench)
            .type("reading:supply", "5.00 V", "reading:current", "0 mA", "reading:moon", "dark");
    HttpResponse<String> handedIn = form.sendTo(bench + "/hand-ins");
    assertThat(handedIn.statusCode()).isEqualTo(303);
    return Visitor.target(handedIn);
  }

  private static void answersAndLooksAgain(Visitor wren, String attempt) {
    String page = wren.opens(attempt).body();
    assertThat(page).contains("What your build says", "Look here", "Measure this next");
    var answered = BenchForm.on(wren, attempt).type("text", "0.0 V").sendTo(attempt + "/answers");
    assertThat(Visitor.target(answered)).isEqualTo(attempt + "#mark");
    assertThat(wren.opens(attempt).body()).contains("Measured besides");
  }
}
