package org.holewise.school.roster;

import org.holewise.store.Postgres;

class RosterOnPostgresIT extends RosterContract {

  RosterOnPostgresIT() {
    super(new Postgres());
  }
}
