package org.holewise.route;

/** Who comes to a route, and how they stand to the bench, session or class that it is about. */
enum Somebody {
  /** Not signed in. */
  ANYBODY,
  /** A student at their own bench. */
  OWN,
  /** The other student of that bench. */
  PARTNER,
  /** A student of the class with another bench. */
  CLASSMATE,
  /** A student of another class. */
  STRANGER,
  TEACHER,
  TECHNICIAN,
  ADMINISTRATOR
}
