package org.holewise.school.system;

/** The application must not run with these settings; the message is for whoever started it. */
final class RefusedStart extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final String action;

  RefusedStart(String why, String action) {
    super(why);
    this.action = action;
  }

  String action() {
    return action;
  }
}
