package org.holewise.school.room;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.Instants;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.GateCheck;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.Power;
import org.holewise.school.room.BenchProgress.Filled;
import org.holewise.school.room.BenchProgress.Times;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The benches of a session as they are now, read with five statements however many there are. */
@Repository
class Room {

  private final JdbcClient db;
  private final Benches benches;
  private final Drafts drafts;
  private final GateChecks gates;
  private final Attempts attempts;

  Room(JdbcClient db, Benches benches, Drafts drafts, GateChecks gates, Attempts attempts) {
    this.db = db;
    this.benches = benches;
    this.drafts = drafts;
    this.gates = gates;
    this.attempts = attempts;
  }

  /** Times of a bench that are in no document. */
  private record Visits(
      Optional<Instant> looked, Optional<Instant> calls, Optional<Instant> joined) {}

  /** All benches by their numbers. */
  List<BenchProgress> of(LabSession session) {
    var seats = benches.of(session);
    var written = drafts.in(session);
    var asked = gates.latestIn(session);
    var visits = visits(session);
    Map<Long, List<Attempt>> handed =
        attempts.of(session).stream().collect(Collectors.groupingBy(Attempt::bench));
    return seats.stream()
        .map(
            bench ->
                progress(
                    session,
                    bench,
                    written.getOrDefault(bench.id(), List.of()),
                    Optional.ofNullable(asked.get(bench.id())),
                    Optional.ofNullable(visits.get(bench.id())),
                    handed.getOrDefault(bench.id(), List.of())))
        .toList();
  }

  private static BenchProgress progress(
      LabSession session,
      Bench bench,
      List<DraftEntry> entries,
      Optional<GateCheck> asked,
      Optional<Visits> visits,
      List<Attempt> attempts) {
    var draft = Draft.of(entries, session.exercise());
    var looked = visits.flatMap(Visits::looked);
    var when = asked.map(GateCheck::at);
    Optional<Instant> joined =
        visits.flatMap(Visits::joined).map(at -> latest(at, session.opened()));
    var worked =
        Stream.of(
                joined.stream(),
                when.stream(),
                entries.stream().map(DraftEntry::at),
                attempts.stream().map(Attempt::at))
            .flatMap(times -> times)
            .max(Instant::compareTo);
    return new BenchProgress(
        bench,
        filled(draft.record(), session.exercise()),
        Power.of(session, draft.layout(), asked, looked),
        new Times(visits.flatMap(Visits::calls), when, looked, worked),
        attempts);
  }

  private static Filled filled(BenchRecord record, Exercise exercise) {
    long placed =
        record.build().stream()
            .flatMap(build -> build.placed().stream())
            .filter(part -> isWhole(part, exercise))
            .map(Placed::ref)
            .distinct()
            .count();
    long read =
        exercise.readings().stream()
            .filter(reading -> record.readings().containsKey(reading.id()))
            .count();
    return new Filled(
        (int) placed, exercise.parts().size(), (int) read, exercise.readings().size());
  }

  private static boolean isWhole(Placed placed, Exercise exercise) {
    return exercise
        .part(placed.ref())
        .filter(part -> placed.pin1().isPresent() || placed.holes().size() >= part.pins().size())
        .isPresent();
  }

  private static Instant latest(Instant at, Optional<Instant> other) {
    return other.filter(at::isBefore).orElse(at);
  }

  private Map<Long, Visits> visits(LabSession session) {
    var visits = new HashMap<Long, Visits>();
    db.sql(
            """
            select b.id,
              (select max(l.made_at) from looks l where l.bench = b.id) as looked_at,
              (select min(h.asked_at) from help_calls h
                where h.bench = b.id and h.ended_at is null) as calls_since,
              (select max(m.joined_at) from bench_members m where m.bench = b.id) as joined_at
            from benches b where b.lab_session = ?
            """)
        .param(session.id())
        .query(
            row -> {
              visits.put(row.getLong("id"), visits(row));
            });
    return visits;
  }

  private static Visits visits(ResultSet row) throws SQLException {
    return new Visits(
        Instants.maybe(row, "looked_at"),
        Instants.maybe(row, "calls_since"),
        Instants.maybe(row, "joined_at"));
  }
}
