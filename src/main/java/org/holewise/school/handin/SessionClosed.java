package org.holewise.school.handin;

/** A bench wanted to write in a session that is not open; nothing was changed. */
public final class SessionClosed extends RuntimeException {

  private static final long serialVersionUID = 1;

  public SessionClosed(long session) {
    super("session " + session + " is not open");
  }
}
