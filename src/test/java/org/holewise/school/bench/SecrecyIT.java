package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.handin.Answers;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Marks;
import org.holewise.school.handin.Request;
import org.holewise.school.session.Bench;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Before the release no answer to a student holds what the mark expects, or how likely what is. */
@TestInstance(Lifecycle.PER_CLASS)
class SecrecyIT {

  private static final String READINGS =
      "supply 4.94 V\nacross-r1 1.31 V\nacross-moon 2.57 V\ncurrent 7.7 mA\nmoon dim\n";

  @TempDir private static Path data;

  private RunningSchool school;

  @BeforeAll
  void start() {
    school = RunningSchool.plain(data);
  }

  @AfterAll
  void close() {
    school.close();
  }

  @ParameterizedTest
  @EnumSource(HintStep.class)
  void holdsAtEveryStep(HintStep hint) {
    var lesson = new Lesson(school, hint, false);
    Bench bench = lesson.at(1, lesson.wren);
    var wren = lesson.in(lesson.wren);
    var typed = handedIn(lesson, bench);
    var answers = walked(wren, bench, typed.size());
    var secrets = secrets(lesson, bench, typed);
    assertThat(secrets.count()).isGreaterThan(100);
    answers.forEach((at, answer) -> assertThat(secrets.in(answer)).as(at).isEmpty());
    lesson.sessions().release(lesson.teacher, lesson.session().id());
    String released = wren.opens("/bench/" + bench.id() + "/attempts/2").body();
    assertThat(secrets.in(released)).anyMatch(found -> found.matches("[0-9.]+"));
    assertThat(secrets.in(released)).contains("expected").anyMatch(f -> f.endsWith("marks"));
  }

  @Test
  void isFoundOutWhereItIsBroken() {
    var secrets = new Secrets();
    secrets.learn("{\"readings\":[{\"expected\":0.012345,\"low\":4.7512}],\"x\":777.1}");
    assertThat(secrets.in("<p>about 12.3 mA</p>")).containsExactly("12.3");
    assertThat(secrets.in("{\"low\":4.7512}")).contains("4.7512");
    assertThat(secrets.in("<p title='4.75'>as built</p>")).contains("4.75", "as built");
    assertThat(secrets.in("<p>777.1 and 112.3 and 12.34567</p>")).isEmpty();
    assertThat(secrets.in("<p>93 of 100 marks</p>")).containsExactly("93 of 100 marks");
    secrets.known("12.3 mA");
    assertThat(secrets.in("<p>about 12.3 mA</p>")).isEmpty();
  }

  private List<String> handedIn(Lesson lesson, Bench bench) {
    String sound = lesson.soundLines();
    String layout =
        sound.lines().filter(l -> !l.contains(" V") && !l.contains("mA")).toList().stream()
            .filter(line -> !line.startsWith("moon"))
            .reduce("", (all, line) -> all + line + "\n");
    var typed =
        List.of(
            sound,
            layout.replace("R1 b10 b14", "R1 b10 b15") + READINGS,
            layout.replace("c14 c22", "c22 c14") + READINGS,
            layout + READINGS,
            layout + "supply 4.94 V\nacross-r1 0.02 V\ncurrent 0.0 mA\nmoon dark\n",
            READINGS);
    for (int i = 0; i < typed.size(); i++) {
      var handIn =
          school
              .part(HandIns.class)
              .handIn(
                  lesson.wren,
                  lesson.session(),
                  bench,
                  Request.of("k" + i, typed.get(i)),
                  typed.get(i));
      school.part(MarkingQueue.class).now(handIn);
    }
    var last = lesson.handIns(bench).get(3);
    school
        .part(Answers.class)
        .give(lesson.wren, lesson.session(), last, "a", "volts R1.1 P1.- 4.93 V");
    school.part(MarkingQueue.class).now(last);
    return typed;
  }

  private Map<String, String> walked(Visitor wren, Bench bench, int attempts) {
    String path = "/bench/" + bench.id();
    var at = new ArrayList<>(List.of("/today", path, path + "/entries", path + "/board"));
    for (int number = 1; number <= attempts; number++) {
      at.add(path + "/attempts/" + number);
    }
    var answers = new LinkedHashMap<String, String>();
    for (String page : at) {
      var answer = wren.opens(page);
      assertThat(answer.statusCode()).as(page).isEqualTo(200);
      answers.put(page, answer.body());
    }
    String third = path + "/attempts/3/answers";
    answers.put(
        third, BenchForm.on(wren, path + "/attempts/3").type("text", "9").sendTo(third).body());
    var form =
        BenchForm.on(wren, path).type("line", "R9 b1").typeLayout().type("reading:moon", "?");
    answers.put("gate", form.sendTo(path + "/gate").body());
    answers.put("hand-in", form.sendTo(path + "/hand-ins").body());
    return answers;
  }

  private Secrets secrets(Lesson lesson, Bench bench, List<String> typed) {
    var secrets = new Secrets();
    for (HandIn handIn : lesson.handIns(bench)) {
      secrets.learn(school.part(Marks.class).latest(handIn).orElseThrow().document());
    }
    typed.forEach(secrets::known);
    secrets.known("4.93 V");
    secrets.known(lesson.session().exercise().aim());
    secrets.known("R1 150 Ω 100 mA");
    return secrets;
  }
}
