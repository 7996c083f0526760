package org.holewise.school.room;

import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;

/** Finds what a path names, each below the one before; what is not there is answered with 404. */
@Component
class Paths {

  private final LabSessions sessions;
  private final Benches benches;
  private final HandIns handIns;

  Paths(LabSessions sessions, Benches benches, HandIns handIns) {
    this.sessions = sessions;
    this.benches = benches;
    this.handIns = handIns;
  }

  LabSession session(long id) {
    return sessions.find(id).orElseThrow(Paths::notThere);
  }

  Bench bench(LabSession session, long id) {
    return benches.find(session, id).orElseThrow(Paths::notThere);
  }

  HandIn handIn(Bench bench, int number) {
    return handIns.find(bench, number).orElseThrow(Paths::notThere);
  }

  static ResponseStatusException notThere() {
    return new ResponseStatusException(HttpStatus.NOT_FOUND);
  }
}
