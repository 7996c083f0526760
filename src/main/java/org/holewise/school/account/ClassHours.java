package org.holewise.school.account;

/** Whether a student's class is at work, so that the student's card opens the door. */
public interface ClassHours {

  /** True while a session of one of the student's classes is open. */
  boolean areOnFor(Person student);
}
