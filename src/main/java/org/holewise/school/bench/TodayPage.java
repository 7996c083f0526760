package org.holewise.school.bench;

import java.util.List;
import java.util.Optional;

/** A student's day: what the class builds now, and what was built before. */
record TodayPage(List<OpenSession> open, List<Before> before) {

  /** {@code mine} is where the student works; empty while no bench is chosen. */
  record OpenSession(long id, String title, String aim, Optional<Seat> mine, List<Seat> seats) {}

  /** A bench with the names of those who are there. */
  record Seat(long bench, int number, List<String> names, boolean full) {}

  record Before(
      long id, String title, int number, String day, boolean released, List<Attempt> attempts) {}
}
