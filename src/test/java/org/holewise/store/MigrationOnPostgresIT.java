package org.holewise.store;

class MigrationOnPostgresIT extends MigrationContract {

  MigrationOnPostgresIT() {
    super(new Postgres());
  }
}
