package org.holewise.store;

import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** The embedded database, in memory. */
public final class H2 implements Store {

  @Override
  public DataSource empty() {
    String url = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";
    return new DriverManagerDataSource(url, "sa", "");
  }
}
