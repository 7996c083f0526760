package org.holewise.school.account;

/** What a person does at the school; each has exactly one. */
public enum Role {
  STUDENT,
  TEACHER,
  TECHNICIAN,
  ADMINISTRATOR;

  /** Teachers and administrators prepare and mark, and may let programs do it for them. */
  public boolean teaches() {
    return this == TEACHER || this == ADMINISTRATOR;
  }
}
