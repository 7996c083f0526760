package org.holewise.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A kind of database that the application keeps its data in. */
public interface Store {

  /** A database of this kind with nothing in it, which nobody else uses. */
  DataSource empty();

  /** A database of this kind with the application's tables, empty. */
  default JdbcClient migrated() {
    return JdbcClient.create(migratedData());
  }

  /** As {@link #migrated()}, for who opens transactions by themselves. */
  default DataSource migratedData() {
    var store = empty();
    Flyway.configure().dataSource(store).locations("classpath:db/common").load().migrate();
    return store;
  }
}
