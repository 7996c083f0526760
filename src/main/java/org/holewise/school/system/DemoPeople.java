package org.holewise.school.system;

import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Whom a visitor of the demo may be; none of them has a password. */
@Component
@Profile("demo")
class DemoPeople {

  private final People people;
  private final DemoClass group;

  DemoPeople(People people, DemoClass group) {
    this.people = people;
    this.group = group;
  }

  Person of(Role role) {
    return switch (role) {
      case STUDENT -> group.student();
      case TEACHER -> staff("Demo teacher", role);
      case TECHNICIAN -> staff("Demo technician", role);
      case ADMINISTRATOR -> staff("Demo administrator", role);
    };
  }

  private Person staff(String name, Role role) {
    return people.named(name).orElseGet(() -> people.addWithoutPassword(name, role));
  }
}
