package org.holewise.school.system;

import java.util.List;

/**
 * What stands round the work on every page: where I am, who I am, the look, the version.
 *
 * @param role empty where nobody is signed in
 * @param csrf what a script sends along with a change; empty where nobody is signed in
 */
record Frame(
    String theme,
    boolean demo,
    boolean signedIn,
    String name,
    String role,
    boolean account,
    List<Link> ways,
    String csrf,
    String version) {

  /** As many ways as stand in one row of a phone. */
  private static final int IN_A_ROW = 3;

  /** Whether on a narrow screen the ways are behind a button: they would take many rows. */
  public boolean folds() {
    return signedIn && (demo || ways.size() > IN_A_ROW);
  }

  /**
   * A way to a place of work.
   *
   * @param current what {@code aria-current} says; empty where the page is elsewhere
   */
  record Link(String path, String text, String current) {}
}
