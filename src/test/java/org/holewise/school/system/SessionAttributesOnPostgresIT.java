package org.holewise.school.system;

import org.holewise.store.Postgres;

class SessionAttributesOnPostgresIT extends SessionAttributesContract {

  SessionAttributesOnPostgresIT() {
    super(new Postgres());
  }
}
