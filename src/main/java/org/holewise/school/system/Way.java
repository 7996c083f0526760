package org.holewise.school.system;

import java.util.List;
import org.holewise.school.account.Role;

/** The places of work in the header, each with the addresses that belong to it. */
enum Way {
  TODAY("/today", "/bench"),
  SESSIONS("/sessions"),
  CLASSES("/classes"),
  TRY("/try", "/schematics"),
  STORE("/store"),
  PEOPLE("/people"),
  AUDIT("/audit"),
  BACKUPS("/backups");

  private final List<String> paths;

  Way(String... paths) {
    this.paths = List.of(paths);
  }

  static List<Way> of(Role role) {
    return switch (role) {
      case STUDENT -> List.of(TODAY);
      case TEACHER -> List.of(SESSIONS, CLASSES, TRY);
      case TECHNICIAN -> List.of(STORE);
      case ADMINISTRATOR -> List.of(SESSIONS, CLASSES, TRY, STORE, PEOPLE, AUDIT, BACKUPS);
    };
  }

  /** Where a person of the role begins. */
  static Way home(Role role) {
    return role == Role.ADMINISTRATOR ? PEOPLE : of(role).get(0);
  }

  String path() {
    return paths.get(0);
  }

  /** What {@code aria-current} says on a page at that address: empty where it is elsewhere. */
  String current(String address) {
    if (address.equals(path())) {
      return "page";
    }
    return paths.stream().anyMatch(path -> address.startsWith(path + "/")) ? "true" : "";
  }
}
