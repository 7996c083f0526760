package org.holewise.school.bench;

import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;
import org.holewise.school.session.LabSession;

/** A student at a bench of a session. */
record Workplace(Person student, Bench bench, LabSession session) {

  Exercise exercise() {
    return session.exercise();
  }

  String path() {
    return "/bench/" + bench.id();
  }
}
