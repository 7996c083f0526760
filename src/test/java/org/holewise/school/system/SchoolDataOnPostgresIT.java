package org.holewise.school.system;

import org.holewise.store.Postgres;

class SchoolDataOnPostgresIT extends SchoolDataContract {
  SchoolDataOnPostgresIT() {
    super(new Postgres());
  }
}
