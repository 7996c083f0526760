package org.holewise.school.room;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.holewise.document.picture.Highlight;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.Looks;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.Moment;
import org.holewise.school.sheet.Moments;
import org.holewise.school.sheet.Schematics;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Puts together what the page of a bench shows: one hand-in or the draft, and what was before. */
@Component
class BenchPage {

  private final Room room;
  private final AttemptPage attempts;
  private final Drafts drafts;
  private final GateChecks gates;
  private final Looks looks;
  private final Schematics schematics;
  private final Moments moments;
  private final Clock clock;

  BenchPage(
      Room room,
      AttemptPage attempts,
      Drafts drafts,
      GateChecks gates,
      Looks looks,
      Schematics schematics,
      Moments moments,
      Clock clock) {
    this.room = room;
    this.attempts = attempts;
    this.drafts = drafts;
    this.gates = gates;
    this.looks = looks;
    this.schematics = schematics;
    this.moments = moments;
    this.clock = clock;
  }

  /** A hand-in to choose. */
  record Handed(int number, Moment at, Optional<Integer> total, int of, String shape) {}

  /** A teacher's visit. */
  record Visit(String by, String note, Moment at) {}

  /** What the gate said. */
  record Asked(boolean go, Moment at) {}

  /** {@code number}: which hand-in to show; empty for the draft. */
  String show(LabSession session, Bench bench, Optional<Integer> number, Model model) {
    BenchProgress progress =
        room.of(session).stream()
            .filter(one -> one.bench().id() == bench.id())
            .findFirst()
            .orElseThrow(Paths::notThere);
    Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
    model.addAttribute("lab", SessionCard.of(session));
    model.addAttribute("bench", bench);
    model.addAttribute("schematic", schematics.of(session.exercise()));
    model.addAttribute("members", bench.members().stream().map(Person::name).toList());
    model.addAttribute("tile", Tile.of(progress, Need.of(progress, session.isOpen(), now), now));
    model.addAttribute("calls", progress.times().calls().map(moments::of));
    model.addAttribute("power", progress.power());
    model.addAttribute("handed", handed(progress));
    model.addAttribute("chosen", number.orElse(0));
    model.addAttribute("visits", visits(bench));
    model.addAttribute("asked", asked(bench));
    absentForm(model, "look", new NewLook(""));
    if (number.isPresent()) {
      attempts.show(session, progress, bench, number.get(), model);
    } else {
      draft(session, bench, model);
    }
    return "room/bench";
  }

  static void absentForm(Model model, String name, Object form) {
    if (!model.containsAttribute(name)) {
      model.addAttribute(name, form);
    }
  }

  private List<Handed> handed(BenchProgress progress) {
    return progress.attempts().stream()
        .sorted(Comparator.comparing(Attempt::number).reversed())
        .map(
            attempt ->
                new Handed(
                    attempt.number(),
                    moments.of(attempt.at()),
                    attempt.result().map(Result::total),
                    attempt.result().map(result -> result.points().of()).orElse(0),
                    shape(attempt)))
        .toList();
  }

  private static String shape(Attempt attempt) {
    return attempt
        .result()
        .map(result -> result.sound() ? "fits" : result.held() ? "waits" : "look")
        .orElse("waits");
  }

  private List<Visit> visits(Bench bench) {
    return looks.of(bench).stream()
        .map(look -> new Visit(look.by().name(), look.note(), moments.of(look.at())))
        .toList();
  }

  private List<Asked> asked(Bench bench) {
    return gates.of(bench).stream()
        .map(check -> new Asked(check.go(), moments.of(check.at())))
        .toList();
  }

  private void draft(LabSession session, Bench bench, Model model) {
    Draft draft = Draft.of(drafts.of(bench), session.exercise());
    model.addAttribute(
        "board", BenchView.of(session.exercise(), draft.record().build(), Highlight.NONE));
    model.addAttribute("lines", draft.lines());
    model.addAttribute("problems", draft.problems().values());
  }
}
