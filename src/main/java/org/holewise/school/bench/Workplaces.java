package org.holewise.school.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import org.holewise.school.account.SignedIn;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.Saved;
import org.holewise.school.handin.SessionClosed;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSessions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;

/** Benches as their own students reach them: to read always, to write while the session is open. */
@Component
class Workplaces {

  private static final String NUMBER = "[0-9]{1,18}";

  /** With room for links that were taken out again. */
  private static final int MOST_NAMES = 4 * Drafts.MOST_ENTRIES;

  private final Benches benches;
  private final LabSessions sessions;
  private final Drafts drafts;

  Workplaces(Benches benches, LabSessions sessions, Drafts drafts) {
    this.benches = benches;
    this.sessions = sessions;
    this.drafts = drafts;
  }

  /** The bench, for who works or worked there; to everybody else it is not there. */
  Workplace find(SignedIn signedIn, String bench) {
    var own = benches.of(signedIn.person(), number(bench)).orElseThrow(Workplaces::notFound);
    var session = sessions.find(own.session()).orElseThrow(Workplaces::notFound);
    return new Workplace(signedIn.person(), own, session);
  }

  /** A number in an address; an address with anything else leads nowhere. */
  static long number(String text) {
    if (!text.matches(NUMBER)) {
      throw notFound();
    }
    return Long.parseLong(text);
  }

  static ResponseStatusException notFound() {
    return new ResponseStatusException(HttpStatus.NOT_FOUND);
  }

  /**
   * Saves changes to the draft.
   *
   * @throws SessionClosed where the session is not open
   * @throws DraftFull where the bench would have more entries than any board takes
   */
  Saved save(Workplace place, List<Change> changes) {
    if (!place.session().isOpen()) {
      throw new SessionClosed(place.session().id());
    }
    long names =
        Stream.concat(
                drafts.of(place.bench()).stream().map(DraftEntry::name),
                changes.stream().map(Change::name))
            .distinct()
            .count();
    if (names > MOST_NAMES) {
      throw new DraftFull();
    }
    return drafts.save(place.student(), place.bench(), changes);
  }

  /** Keeps what a form changed, as far as it can be kept. */
  Answered keep(Workplace place, EntryForm form) {
    var lines = TypedLines.read(form, place.exercise());
    var changes = new LinkedHashMap<String, Change>();
    form.changes().forEach(change -> changes.put(change.name(), change));
    form.act().ifPresent(change -> changes.put(change.name(), change));
    lines.changes().forEach(change -> changes.put(change.name(), change));
    var saved = save(place, List.copyOf(changes.values()));
    return Answered.kept(lines, form.refused(), saved.replaced());
  }
}
