package org.holewise.school.account;

import java.time.Instant;

/** An act as it was noted. */
record AuditEvent(
    long id, Instant at, long actor, String actorName, String act, String subject, long subjectId) {

  boolean isAbout(String kind) {
    return subject.equals(kind);
  }
}
