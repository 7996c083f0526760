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

  /**
   * A way to a place of work.
   *
   * @param current what {@code aria-current} says; empty where the page is elsewhere
   */
  record Link(String path, String text, String current) {}
}
