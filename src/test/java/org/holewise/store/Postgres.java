package org.holewise.store;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * The server database: the one that HOLEWISE_TEST_POSTGRES_URL, _USER and _PASSWORD name, else one
 * in a container where Docker runs. Where there is neither, whoever asks for it is skipped. Every
 * database handed out is a schema of its own.
 */
public final class Postgres implements Store {

  private static final String VARIABLE = "HOLEWISE_TEST_POSTGRES_";

  private static final Optional<Server> SERVER = named().or(Postgres::contained);

  /** Where a database is and who may use it. */
  public record Server(String url, String user, String password) {

    DataSource dataSource() {
      return new DriverManagerDataSource(url, user, password);
    }

    /** The major version of the server. */
    public int version() {
      return JdbcClient.create(dataSource())
              .sql("select current_setting('server_version_num')")
              .query(String.class)
              .single()
              .transform(Integer::parseInt)
          / 10_000;
    }

    private Server named(String database) {
      return new Server(url.replaceFirst("/[^/?]*(?=$|\\?)", "/" + database), user, password);
    }

    private Server in(String schema) {
      String join = url.contains("?") ? "&" : "?";
      return new Server(url + join + "currentSchema=" + schema, user, password);
    }
  }

  @Override
  public DataSource empty() {
    return emptyServer().dataSource();
  }

  /** As {@link #empty()}, for who connects by themselves. */
  public static Server emptyServer() {
    assumeTrue(SERVER.isPresent(), "neither a PostgreSQL server is named nor Docker runs");
    var server = SERVER.get();
    String schema = "test_" + UUID.randomUUID().toString().replace("-", "");
    JdbcClient.create(server.dataSource()).sql("create schema " + schema).update();
    return server.in(schema);
  }

  /** A database of its own, with nothing in it. */
  public static Server emptyDatabase() {
    assumeTrue(SERVER.isPresent(), "neither a PostgreSQL server is named nor Docker runs");
    var server = SERVER.get();
    String database = "test_" + UUID.randomUUID().toString().replace("-", "");
    JdbcClient.create(server.dataSource()).sql("create database " + database).update();
    return server.named(database);
  }

  private static Optional<Server> named() {
    return Optional.ofNullable(System.getenv(VARIABLE + "URL"))
        .map(
            url ->
                new Server(
                    url, System.getenv(VARIABLE + "USER"), System.getenv(VARIABLE + "PASSWORD")));
  }

  // Stopped by Testcontainers when this JVM ends.
  private static Optional<Server> contained() {
    if (!DockerClientFactory.instance().isDockerAvailable()) {
      return Optional.empty();
    }
    var container = new PostgreSQLContainer("postgres:17-alpine");
    container.start();
    return Optional.of(
        new Server(container.getJdbcUrl(), container.getUsername(), container.getPassword()));
  }
}
