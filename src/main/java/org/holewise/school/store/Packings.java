package org.holewise.school.store;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.stereotype.Repository;

/** The kits of sessions, with what was moved for them. */
@Repository
class Packings {

  private final LabSessions sessions;
  private final Benches benches;
  private final Movements movements;

  Packings(LabSessions sessions, Benches benches, Movements movements) {
    this.sessions = sessions;
    this.benches = benches;
    this.movements = movements;
  }

  Packing of(LabSession session) {
    return of(List.of(session)).get(0);
  }

  /** Those of seven days, by day. */
  List<Packing> inWeekFrom(LocalDate day) {
    return of(sessions.inWeekFrom(day));
  }

  /** Those of fourteen days that are not over, by day. */
  List<Packing> inFortnightFrom(LocalDate day) {
    return Stream.of(day, day.plusDays(7))
        .flatMap(start -> sessions.inWeekFrom(start).stream())
        .filter(session -> session.state() != LabSession.State.CLOSED)
        .collect(Collectors.collectingAndThen(Collectors.toList(), this::of));
  }

  private List<Packing> of(List<LabSession> planned) {
    var uses = movements.of(planned.stream().map(LabSession::id).toList());
    return planned.stream()
        .map(
            session ->
                new Packing(
                    Kit.of(session, benches.of(session).size()),
                    uses.stream().filter(use -> use.session() == session.id()).toList()))
        .toList();
  }
}
