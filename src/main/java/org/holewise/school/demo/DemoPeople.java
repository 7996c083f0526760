package org.holewise.school.demo;

import java.util.stream.Stream;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Whom a visitor of the demo may be; none of them has a password. */
@Component
@Profile("demo")
public class DemoPeople {

  private final People people;
  private final Classes classes;
  private final LabSessions sessions;
  private final Benches benches;

  DemoPeople(People people, Classes classes, LabSessions sessions, Benches benches) {
    this.people = people;
    this.classes = classes;
    this.sessions = sessions;
    this.benches = benches;
  }

  public Person of(Role role) {
    return switch (role) {
      case STUDENT -> student();
      case TEACHER -> staff("Demo teacher", role);
      case TECHNICIAN -> staff("Demo technician", role);
      case ADMINISTRATOR -> staff("Demo administrator", role);
    };
  }

  private Person staff(String name, Role role) {
    return people.named(name).orElseGet(() -> people.addWithoutPassword(name, role));
  }

  // Visitors may close sessions and move students: then any other student will do.
  private Person student() {
    var all = sessions.all();
    return Stream.concat(all.stream().filter(LabSession::isOpen), all.stream())
        .flatMap(session -> benches.of(session).stream())
        .filter(bench -> bench.number() == Lesson.OF_THE_VISITOR)
        .flatMap(bench -> bench.members().stream())
        .findFirst()
        .or(() -> classes.all().stream().flatMap(g -> classes.students(g).stream()).findFirst())
        .orElseThrow(() -> new IllegalStateException("the demo has no student"));
  }
}
