package org.holewise.school.system;

import java.net.URI;
import java.sql.DatabaseMetaData;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.stereotype.Component;

/** What the data are on: whether it is a PostgreSQL server, and how that is backed up. */
@Component
class DatabaseServer {

  private static final String IN_MEMORY = "jdbc:h2:mem:";
  private static final String SCHEME = "jdbc:";
  private static final int STANDARD_PORT = 5432;

  private final DataSource data;

  DatabaseServer(DataSource data) {
    this.data = data;
  }

  /** What to type, one command after the other. */
  record Commands(String database, String dump, String restore) {}

  /** Empty where the database is the embedded one. */
  Optional<Commands> commands() {
    try {
      return JdbcUtils.extractDatabaseMetaData(data, DatabaseServer::commands);
    } catch (MetaDataAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Whether the database is in memory alone, and ends with the program. */
  boolean keepsNothing() {
    try {
      return JdbcUtils.extractDatabaseMetaData(
          data, of -> of.getURL().toLowerCase(Locale.ROOT).startsWith(IN_MEMORY));
    } catch (MetaDataAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Optional<Commands> commands(DatabaseMetaData of) throws SQLException {
    if (!of.getDatabaseProductName().equals("PostgreSQL")) {
      return Optional.empty();
    }
    var address = URI.create(of.getURL().substring(SCHEME.length()));
    String database = of.getConnection().getCatalog();
    return Optional.of(commands(who(address, of.getUserName()), database));
  }

  private static Commands commands(String who, String database) {
    String file = database + ".dump";
    String restored = database + "_restored";
    return new Commands(
        database,
        "pg_dump " + who + " --format=custom --file=" + file + " " + database,
        "createdb "
            + who
            + " "
            + restored
            + "\n"
            + "pg_restore "
            + who
            + " --no-owner --exit-on-error --dbname="
            + restored
            + " "
            + file);
  }

  private static String who(URI address, String user) {
    String host = address.getHost() == null ? "localhost" : address.getHost();
    int port = address.getPort() < 0 ? STANDARD_PORT : address.getPort();
    return "--host=" + host + " --port=" + port + " --username=" + user;
  }
}
