package org.holewise.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

/** What the migrations do on every kind of database. */
abstract class MigrationContract {

  private final Store store;

  MigrationContract(Store store) {
    this.store = store;
  }

  @Test
  void migrateAnEmptyDatabaseOnce() {
    var flyway =
        Flyway.configure().dataSource(store.empty()).locations("classpath:db/common").load();
    assertThat(flyway.migrate().migrationsExecuted).isPositive();
    assertThat(flyway.migrate().migrationsExecuted).isZero();
    assertThat(flyway.info().pending()).isEmpty();
  }

  @Test
  void startWithNobodyAndNothing() {
    var db = store.migrated();
    for (String table : new String[] {"people", "api_tokens", "installation", "tries"}) {
      int rows = db.sql("select count(*) from " + table).query(Integer.class).single();
      assertThat(rows).as(table).isZero();
    }
  }
}
