package org.holewise.school.bench;

import java.util.Optional;
import java.util.function.Supplier;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.EntryName;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.KeyTaken;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Request;
import org.holewise.school.handin.SessionClosed;
import org.holewise.school.sheet.Gate;
import org.holewise.school.sheet.Said;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/** What a bench may ask for with its form. Whatever it asks, what was typed is kept first. */
@Component
class Desk {

  private final Workplaces workplaces;
  private final Drafts drafts;
  private final GateChecks gate;
  private final HandIns handIns;
  private final MarkingQueue queue;
  private final HelpCalls help;

  Desk(
      Workplaces workplaces,
      Drafts drafts,
      GateChecks gate,
      HandIns handIns,
      MarkingQueue queue,
      HelpCalls help) {
    this.workplaces = workplaces;
    this.drafts = drafts;
    this.gate = gate;
    this.handIns = handIns;
    this.queue = queue;
    this.help = help;
  }

  Outcome keep(Workplace place, EntryForm form) {
    return whileOpen(
        place, form, () -> new Outcome(workplaces.keep(place, form), place.path() + form.place()));
  }

  /** Ready to switch on? */
  Outcome ask(Workplace place, EntryForm form) {
    return whileOpen(place, form, () -> asked(place, workplaces.keep(place, form)));
  }

  /** The same form again leads to the same hand-in, even once the session is closed. */
  Outcome handIn(Workplace place, EntryForm form) {
    if (!Request.isKey(form.key())) {
      throw EntryForm.unknown();
    }
    return whileOpen(place, form, () -> handedIn(place, form));
  }

  Outcome callTeacher(Workplace place, EntryForm form) {
    return helped(place, form, () -> help.ask(place.student(), place.bench()));
  }

  Outcome callOff(Workplace place, EntryForm form) {
    return helped(place, form, () -> help.end(place.bench()));
  }

  private Outcome helped(Workplace place, EntryForm form, Runnable call) {
    return whileOpen(
        place,
        form,
        () -> {
          Answered answered = workplaces.keep(place, form);
          call.run();
          return new Outcome(answered, place.path() + "#help");
        });
  }

  private Outcome asked(Workplace place, Answered kept) {
    var draft = draft(place);
    if (kept.whole() && draft.problems().keySet().stream().anyMatch(EntryName::isLayout)) {
      return stopped(HttpStatus.UNPROCESSABLE_CONTENT, "student.gate.first");
    }
    if (kept.whole()) {
      boolean go = Gate.check(place.exercise(), draft.record()).go();
      gate.add(place.student(), place.bench(), draft.layout(), go);
    }
    return new Outcome(kept, place.path() + "#gate");
  }

  private Outcome handedIn(Workplace place, EntryForm form) {
    var request = Request.of(form.key(), form.content());
    Optional<HandIn> before = handIns.sent(place.bench(), request);
    if (before.isPresent()) {
      return new Outcome(Answered.nothing(), attempt(place, before.get()));
    }
    Answered kept = workplaces.keep(place, form);
    var draft = draft(place);
    if (!kept.whole()) {
      return new Outcome(kept, place.path());
    }
    if (!draft.problems().isEmpty()) {
      return stopped(HttpStatus.UNPROCESSABLE_CONTENT, "student.handIn.first");
    }
    if (draft.lines().isEmpty()) {
      return stopped(HttpStatus.UNPROCESSABLE_CONTENT, "student.handIn.empty");
    }
    HandIn handIn =
        handIns.handIn(place.student(), place.session(), place.bench(), request, draft.lines());
    queue.now(handIn);
    return new Outcome(Answered.nothing(), attempt(place, handIn));
  }

  private Outcome whileOpen(Workplace place, EntryForm form, Supplier<Outcome> act) {
    try {
      return act.get();
    } catch (SessionClosed closed) {
      return refused(HttpStatus.CONFLICT, "student.closed", form);
    } catch (DraftFull full) {
      return refused(HttpStatus.UNPROCESSABLE_CONTENT, "student.full", form);
    } catch (KeyTaken taken) {
      workplaces.keep(place, form);
      return stopped(HttpStatus.CONFLICT, "student.keyTaken");
    }
  }

  private static Outcome refused(HttpStatus status, String why, EntryForm form) {
    return new Outcome(Answered.refused(status, Said.of(why), form), "");
  }

  private static Outcome stopped(HttpStatus status, String why) {
    return new Outcome(Answered.stopped(status, Said.of(why)), "");
  }

  private Draft draft(Workplace place) {
    return Draft.of(drafts.of(place.bench()), place.exercise());
  }

  private static String attempt(Workplace place, HandIn handIn) {
    return place.path() + "/attempts/" + handIn.number();
  }
}
