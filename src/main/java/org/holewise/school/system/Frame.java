package org.holewise.school.system;

/** What stands round the work on every page: who I am, the look, the version. */
record Frame(
    String theme,
    boolean demo,
    boolean signedIn,
    String name,
    boolean account,
    boolean people,
    String version) {}
