package org.holewise.school.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Request;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.Gate;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What students do at their bench, by the calls that their page makes. */
@Component
@Profile("demo")
class BenchWork {

  private final Benches benches;
  private final Drafts drafts;
  private final GateChecks gate;
  private final HandIns handIns;
  private final MarkingQueue marking;
  private final HelpCalls calls;

  BenchWork(
      Benches benches,
      Drafts drafts,
      GateChecks gate,
      HandIns handIns,
      MarkingQueue marking,
      HelpCalls calls) {
    this.benches = benches;
    this.drafts = drafts;
    this.gate = gate;
    this.handIns = handIns;
    this.marking = marking;
    this.calls = calls;
  }

  Bench bench(LabSession session, int number) {
    return benches.of(session).stream()
        .filter(bench -> bench.number() == number)
        .findFirst()
        .orElseThrow();
  }

  /** The members type in turn, each line an entry; what was there under its name is replaced. */
  void type(LabSession session, Bench bench, List<String> lines) {
    var before =
        drafts.of(bench).stream().collect(Collectors.toMap(DraftEntry::name, Function.identity()));
    var names = new ArrayList<String>();
    for (String line : lines) {
      String name = name(line, names, session.exercise());
      names.add(name);
      long base = before.containsKey(name) ? before.get(name).revision() : 0;
      String text = line.substring(line.indexOf(' ') + 1);
      Person writer = bench.members().get(names.size() % bench.members().size());
      drafts.save(writer, bench, List.of(new Change(name, text, base)));
    }
  }

  /** Asks whether the bench may switch on. */
  void ask(LabSession session, Bench bench) {
    Draft draft = draft(session, bench);
    boolean go = Gate.check(session.exercise(), draft.record()).go();
    gate.add(first(bench), bench, draft.layout(), go);
  }

  /** Hands in what is typed, and has it marked. */
  void handIn(LabSession session, Bench bench) {
    String lines = draft(session, bench).lines();
    String key = "demo-" + (handIns.of(bench).size() + 1);
    marking.now(handIns.handIn(first(bench), session, bench, Request.of(key, lines), lines));
  }

  void callForHelp(Bench bench) {
    calls.ask(first(bench), bench);
  }

  private Draft draft(LabSession session, Bench bench) {
    return Draft.of(drafts.of(bench), session.exercise());
  }

  private static String name(String line, List<String> before, Exercise exercise) {
    String word = line.substring(0, line.indexOf(' '));
    if (word.equals("link")) {
      return "link:demo" + before.stream().filter(name -> name.startsWith("link:")).count();
    }
    return (exercise.part(word).isPresent() ? "part:" : "reading:") + word;
  }

  private static Person first(Bench bench) {
    return bench.members().get(0);
  }
}
