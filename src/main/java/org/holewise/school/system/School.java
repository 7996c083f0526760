package org.holewise.school.system;

/** Whether this is a demo for one computer or a school's own installation. */
record School(Kind kind) {

  enum Kind {
    DEMO,
    SCHOOL
  }

  boolean isDemo() {
    return kind == Kind.DEMO;
  }
}
