package org.holewise.running;

import java.nio.file.Path;
import java.util.List;
import org.holewise.store.Postgres;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Where a school keeps its data: what its command line says, and how a test looks at them. */
public record Settings(List<String> arguments, String url, String user, String password) {

  /** The embedded database in the folder. */
  public static Settings embedded(Path folder) {
    String file = "jdbc:h2:file:" + folder.toAbsolutePath().resolve("holewise") + ";WRITE_DELAY=0";
    return new Settings(List.of("--holewise.data=" + folder), file, "sa", "");
  }

  public static Settings on(Postgres.Server server, Path folder) {
    return new Settings(
        List.of(
            "--holewise.data=" + folder,
            "--spring.datasource.url=" + server.url(),
            "--spring.datasource.username=" + server.user(),
            "--spring.datasource.password=" + server.password()),
        server.url(),
        server.user(),
        server.password());
  }

  /** The data; the embedded ones only while nobody else has them open. */
  public JdbcClient data() {
    return JdbcClient.create(new DriverManagerDataSource(url, user, password));
  }
}
