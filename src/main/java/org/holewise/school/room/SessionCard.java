package org.holewise.school.room;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.holewise.school.session.LabSession;

/**
 * A session as pages name it.
 *
 * @param state planned, open or closed
 * @param shape of the state
 */
record SessionCard(
    long id,
    String group,
    String title,
    String day,
    String iso,
    String state,
    String shape,
    boolean open,
    boolean released) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

  static SessionCard of(LabSession session) {
    return new SessionCard(
        session.id(),
        session.group().name(),
        session.exercise().title(),
        shown(session.plannedFor()),
        session.plannedFor().toString(),
        session.state().name().toLowerCase(Locale.ROOT),
        shape(session.state()),
        session.isOpen(),
        session.released().isPresent());
  }

  static String shown(LocalDate day) {
    return DAY.format(day);
  }

  private static String shape(LabSession.State state) {
    return switch (state) {
      case PLANNED -> "waits";
      case OPEN -> "works";
      case CLOSED -> "fits";
    };
  }
}
