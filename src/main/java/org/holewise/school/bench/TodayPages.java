package org.holewise.school.bench;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.school.account.Person;
import org.holewise.school.bench.TodayPage.Before;
import org.holewise.school.bench.TodayPage.OpenSession;
import org.holewise.school.bench.TodayPage.Seat;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.stereotype.Component;

/** Makes a student's first page. */
@Component
class TodayPages {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private final LabSessions sessions;
  private final Benches benches;
  private final Classes classes;
  private final Attempts attempts;

  TodayPages(LabSessions sessions, Benches benches, Classes classes, Attempts attempts) {
    this.sessions = sessions;
    this.benches = benches;
    this.classes = classes;
    this.attempts = attempts;
  }

  TodayPage of(Person student) {
    return new TodayPage(
        sessions.openFor(student).stream().map(session -> open(student, session)).toList(),
        benches.allOf(student).stream().flatMap(this::before).toList());
  }

  /** A session of one of the student's classes; any other is not there. */
  LabSession session(Person student, long id) {
    return sessions
        .find(id)
        .filter(session -> isOf(student, session))
        .orElseThrow(Workplaces::notFound);
  }

  private boolean isOf(Person student, LabSession session) {
    return classes.students(session.group()).stream().anyMatch(one -> one.id() == student.id());
  }

  private OpenSession open(Person student, LabSession session) {
    var all = benches.of(session);
    Optional<Bench> mine = all.stream().filter(bench -> bench.has(student)).findFirst();
    return new OpenSession(
        session.id(),
        session.exercise().title(),
        session.exercise().aim(),
        mine.map(bench -> seat(bench, student)),
        all.stream().map(bench -> seat(bench, student)).toList());
  }

  private static Seat seat(Bench bench, Person but) {
    List<String> others =
        bench.members().stream()
            .filter(member -> member.id() != but.id())
            .map(Person::name)
            .toList();
    boolean full = bench.members().size() >= Benches.MOST_MEMBERS;
    return new Seat(bench.id(), bench.number(), others, full);
  }

  private Stream<Before> before(Bench bench) {
    return sessions.find(bench.session()).stream()
        .map(
            session ->
                new Before(
                    bench.id(),
                    session.exercise().title(),
                    bench.number(),
                    DAY.format(session.plannedFor()),
                    session.released().isPresent(),
                    attempts.of(bench, session)));
  }
}
