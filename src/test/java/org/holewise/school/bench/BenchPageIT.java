package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import org.holewise.running.Visitor;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.Looks;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.junit.jupiter.api.Test;

/** The working page of a bench, used as a browser without scripts uses it. */
class BenchPageIT extends AtBench {

  private static final int TWINS = 6;

  @Test
  void isThereForWhoWorksThereAlone() {
    var elsewhere = new Lesson(school, HintStep.PLACE, false);
    var stranger = elsewhere.in(elsewhere.wren);
    var neighbour = lesson.in(lesson.sorrel);
    for (Visitor other : List.of(stranger, neighbour)) {
      for (String at : List.of("", "/entries", "/board", "/attempts/1", "/draft")) {
        assertThat(other.opens(path + at).statusCode()).as(at).isEqualTo(404);
      }
      var form = BenchForm.on(other, "/today");
      for (String at : List.of("/draft", "/gate", "/hand-ins", "/help", "/help/ended")) {
        assertThat(form.sendTo(path + at).statusCode()).as(at).isEqualTo(404);
      }
      assertThat(form.sendTo("/today/0/bench").statusCode()).isEqualTo(404);
    }
    var foreign = "/today/" + lesson.session().id() + "/bench";
    assertThat(BenchForm.on(stranger, "/today").type("number", "1").sendTo(foreign).statusCode())
        .isEqualTo(404);
    assertThat(wren.opens(path).statusCode()).isEqualTo(200);
    assertThat(lesson.draft(bench)).isEmpty();
  }

  @Test
  void keepsWhatIsTypedAndShowsItAgain() {
    var saved =
        BenchForm.on(wren, path)
            .type("part:R1:1", "b 10", "part:R1:marked", "brown green brown", "line", "supply 5 V")
            .sendTo(path + "/draft");
    assertThat(saved.statusCode()).isEqualTo(303);
    var again = BenchForm.on(wren, path);
    assertThat(again.field("part:R1:1")).isEqualTo("b10");
    assertThat(again.field("part:R1:marked")).isEqualTo("brown green brown");
    assertThat(again.field("reading:supply")).isEqualTo("5 V");
    assertThat(again.field("was:part:R1")).isEqualTo("1=b10 marked brown green brown");
    assertThat(again.field("line")).isEmpty();
  }

  @Test
  void leavesALineThatNamesNothingInItsBox() {
    var answer = BenchForm.on(wren, path).type("line", "R9 b10 b14").sendTo(path + "/draft");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(BenchForm.in(wren, answer).field("line")).isEqualTo("R9 b10 b14");
    assertThat(answer.body()).contains("R9");
  }

  @Test
  void addsALinkOnceHoweverOftenItsFormIsSent() {
    var form = BenchForm.on(wren, path).type("line", "link a1 b2").type("to", "links");
    form.type(form.spare() + ":from", "+a10", form.spare() + ":to", "a10");
    assertThat(Visitor.target(form.sendTo(path + "/draft"))).isEqualTo(path + "#links");
    form.sendTo(path + "/draft");
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).containsOnlyOnce("+a10 a10");
    assertThat(lesson.draft(bench)).hasSize(2);
    var next = BenchForm.on(wren, path);
    next.type("out", lesson.draft(bench).get(0).name()).sendTo(path + "/draft");
    assertThat(lesson.draft(bench)).filteredOn(entry -> entry.text().isEmpty()).hasSize(1);
  }

  @Test
  void refusesWhatIsTooLongAndLosesNothing() {
    String longer = "b".repeat(21);
    var answer =
        BenchForm.on(wren, path)
            .type("part:R1:1", longer, "part:D1:a", "c14")
            .sendTo(path + "/draft");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("href=\"#part:R1:1\"", "at most 20 characters");
    assertThat(BenchForm.in(wren, answer).field("part:R1:1")).isEqualTo(longer);
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).containsExactly("a=c14");
  }

  @Test
  void refusesEntriesThatTheExerciseLacks() {
    for (String name : List.of("part:R9:1", "part:R1:x", "part:R1", "reading:none", "link:A!:to")) {
      var answer = BenchForm.on(wren, path).type(name, "b1").sendTo(path + "/draft");
      assertThat(answer.statusCode()).as(name).isEqualTo(400);
    }
    assertThat(lesson.draft(bench)).isEmpty();
  }

  @Test
  void tellsWhatOfAPartnerWasReplacedAndGivesItBack() {
    lesson.at(1, lesson.sorrel);
    var sorrel = lesson.in(lesson.sorrel);
    var late = BenchForm.on(wren, path);
    BenchForm.on(sorrel, path).type("part:R1:1", "b9").sendTo(path + "/draft");
    var answer = late.type("part:R1:1", "b10").sendTo(path + "/draft");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains(lesson.sorrel.name() + " had written 1=b9 here");
    BenchForm.in(wren, answer).type("back", "part:R1").sendTo(path + "/draft");
    assertThat(BenchForm.on(wren, path).field("part:R1:1")).isEqualTo("b9");
  }

  @Test
  void doesNotTouchWhatAPartnerTypedMeanwhileElsewhere() {
    lesson.at(1, lesson.sorrel);
    var sorrel = lesson.in(lesson.sorrel);
    var late = BenchForm.on(wren, path);
    BenchForm.on(sorrel, path).type("part:R1:1", "b9").sendTo(path + "/draft");
    assertThat(late.type("part:D1:a", "c14").sendTo(path + "/draft").statusCode()).isEqualTo(303);
    assertThat(BenchForm.on(wren, path).field("part:R1:1")).isEqualTo("b9");
  }

  @Test
  void refusesToHandInWhatCannotBeReadAndSaysWhere() {
    var answer =
        BenchForm.on(wren, path)
            .typeLayout()
            .type("part:R1:2", "z99", "reading:current", "11.9")
            .sendTo(path + "/hand-ins");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("href=\"#part:R1:1\"", "z99", "href=\"#reading:current\"");
    assertThat(BenchForm.in(wren, answer).field("part:R1:2")).isEqualTo("z99");
    assertThat(lesson.handIns(bench)).isEmpty();
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).contains("1=b10 2=z99", "11.9");
  }

  @Test
  void refusesToHandInNothing() {
    var answer = BenchForm.on(wren, path).sendTo(path + "/hand-ins");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("Nothing is entered yet");
  }

  @Test
  void handsInOnceHoweverOftenItIsSent() throws InterruptedException, ExecutionException {
    var form = BenchForm.on(wren, path).typeLayout();
    var sent = new ArrayList<Callable<HttpResponse<String>>>();
    for (int i = 0; i < TWINS; i++) {
      sent.add(() -> form.sendTo(path + "/hand-ins"));
    }
    var threads = Executors.newFixedThreadPool(TWINS);
    try {
      for (var answer : threads.invokeAll(sent)) {
        assertThat(Visitor.target(answer.get())).isEqualTo(path + "/attempts/1");
      }
    } finally {
      threads.shutdown();
    }
    assertThat(Visitor.target(form.sendTo(path + "/hand-ins"))).isEqualTo(path + "/attempts/1");
    assertThat(lesson.handIns(bench)).hasSize(1);
  }

  @Test
  void saysWhatToDoWhereAPageHandsInAgainWithAnotherContent() {
    var form = BenchForm.on(wren, path).typeLayout();
    form.sendTo(path + "/hand-ins");
    var answer = form.type("part:R1:2", "b15").sendTo(path + "/hand-ins");
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("had handed in already");
    var again = BenchForm.in(wren, answer);
    assertThat(again.field("part:R1:2")).isEqualTo("b15");
    assertThat(Visitor.target(again.sendTo(path + "/hand-ins"))).isEqualTo(path + "/attempts/2");
    assertThat(lesson.handIns(bench)).hasSize(2);
  }

  @Test
  void keepsNothingOnceTheSessionIsClosedAndShowsWhatWasTyped() {
    var form = BenchForm.on(wren, path).typeLayout();
    var sent = BenchForm.on(wren, path).type("part:R1:1", "b9");
    sent.sendTo(path + "/hand-ins");
    lesson.sessions().close(lesson.teacher, lesson.session().id());
    for (String at : List.of("/draft", "/gate", "/hand-ins", "/help", "/help/ended")) {
      var answer = form.sendTo(path + at);
      assertThat(answer.statusCode()).as(at).isEqualTo(409);
      assertThat(answer.body()).contains("This session is closed, so nothing was changed.");
      assertThat(BenchForm.in(wren, answer).field("part:R1:2")).isEqualTo("b14");
      assertThat(BenchForm.in(wren, answer).field("line")).isEqualTo("link a24 -a24");
    }
    assertThat(sent.sendTo(path + "/hand-ins").statusCode()).isEqualTo(303);
    assertThat(lesson.draft(bench)).extracting(DraftEntry::text).containsExactly("1=b9");
    lesson.sessions().open(lesson.teacher, lesson.session().id());
    assertThat(form.sendTo(path + "/draft").statusCode()).isIn(200, 303);
  }

  @Test
  void stopsAtTheGateAndAsksAgainWhenTheLayoutChanges() {
    BenchForm.on(wren, path).typeLayout().sendTo(path + "/gate");
    assertThat(wren.opens(path).body()).contains("You may switch on");
    BenchForm.on(wren, path).type("line", "link +a20 -a20").sendTo(path + "/draft");
    assertThat(wren.opens(path).body()).contains("The layout is not the one that you asked about");
    BenchForm.on(wren, path).sendTo(path + "/gate");
    assertThat(wren.opens(path).body())
        .contains("Stop: leave the power off", "would be shorted", "+a20");
  }

  @Test
  void waitsForTheTeacherWhereTheTeacherLooksFirst() {
    var careful = new Lesson(school, HintStep.PLACE, true);
    var own = careful.at(1, careful.wren);
    var visitor = careful.in(careful.wren);
    String at = "/bench/" + own.id();
    BenchForm.on(visitor, at).typeLayout().sendTo(at + "/gate");
    assertThat(visitor.opens(at).body()).contains("Your teacher looks first");
    school.part(Looks.class).add(careful.teacher, own, "");
    assertThat(visitor.opens(at).body()).contains("You may switch on");
  }

  @Test
  void callsTheTeacherAndTakesItBack() {
    BenchForm.on(wren, path).type("part:R1:1", "b9").sendTo(path + "/help");
    assertThat(school.part(HelpCalls.class).waitsSince(bench)).isPresent();
    assertThat(BenchForm.on(wren, path).field("part:R1:1")).isEqualTo("b9");
    BenchForm.on(wren, path).sendTo(path + "/help/ended");
    assertThat(school.part(HelpCalls.class).waitsSince(bench)).isEmpty();
  }

  @Test
  void offersNoPlaceAtAFullBench() {
    for (String name : List.of("Hazel", "Rowan", "Bryony")) {
      lesson.at(1, lesson.another(name + lesson.session().id()));
    }
    assertThat(lesson.at(1, lesson.wren).members()).hasSize(Benches.MOST_MEMBERS);
    var sorrel = lesson.in(lesson.sorrel);
    String join = "/today/" + lesson.session().id() + "/bench";
    assertThat(sorrel.opens("/today").body()).doesNotContain("value=\"1\"").contains("value=\"2\"");
    var answer = sorrel.sends("/today", join, "number", "1");
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("Bench 1 is full");
    assertThat(sorrel.sends("/today", join, "number", "99").body()).contains("no such bench");
    assertThat(sorrel.sends("/today", join).body()).contains("no such bench");
    assertThat(sorrel.sends("/today", join, "number", "2").statusCode()).isEqualTo(303);
    assertThat(sorrel.sends("/today", join, "number", "3").body()).contains("a bench in this");
  }
}
