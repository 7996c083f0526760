package org.holewise.school.handin;

/** A request came again under its key with another content; nothing was changed. */
public final class KeyTaken extends RuntimeException {

  private static final long serialVersionUID = 1;

  KeyTaken(String key) {
    super("another request has the key " + key);
  }
}
