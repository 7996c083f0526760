package org.holewise.school.session;

import java.util.List;
import org.holewise.school.account.Person;

/** A numbered place in a session and the students who work there, in the order they came. */
public record Bench(long id, long session, int number, List<Person> members) {

  public boolean has(Person person) {
    return members.stream().anyMatch(member -> member.id() == person.id());
  }
}
