package org.holewise.route;

import org.holewise.running.LabHour;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.roster.Cards;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSessions;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Somebody of a role with a session of their own; comes in anew when it is gone. */
final class Guest {

  private static final String PASSWORD = "violet kettle under seven ladders";

  private final RunningSchool school;
  private final LabHour.Seat seat;
  private final Role role;
  private String cookie = "";
  private String token = "";
  private int times;

  /** {@code seat}: in whose class and session a student is. */
  Guest(RunningSchool school, LabHour.Seat seat, Role role) {
    this.school = school;
    this.seat = seat;
    this.role = role;
  }

  String cookie() {
    return cookie;
  }

  String token() {
    return token;
  }

  boolean isIn() {
    return !cookie.isEmpty();
  }

  void goesOut() {
    cookie = "";
  }

  /** Comes in as somebody new: whoever it was before may have been sent away. */
  void comesIn() {
    school.part(JdbcClient.class).sql("delete from tries").update();
    var visitor = new Visitor(school);
    if (role == Role.STUDENT) {
      visitor.sends("/card", "/card", "code", school.part(Cards.class).make(student()));
    } else {
      String name = role + " " + seat.bench().id() + " " + System.identityHashCode(this) + times++;
      school.part(People.class).add(name, role, PASSWORD);
      visitor.signsIn(name, PASSWORD);
    }
    token = Visitor.token(visitor.opens("/sign-in")).orElseThrow();
    cookie = visitor.cookie("SESSION").orElseThrow().getValue();
  }

  private Person student() {
    var sessions = school.part(LabSessions.class);
    long session = seat.session().id();
    var student = school.part(Classes.class).addStudent(seat.session().group(), "Sorrel");
    sessions.open(seat.student(), session);
    var open = sessions.find(session).orElseThrow();
    school.part(Benches.class).join(open, 1 + times++ % 2, student);
    return student;
  }
}
