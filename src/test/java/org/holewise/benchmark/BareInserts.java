package org.holewise.benchmark;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.flywaydb.core.Flyway;
import org.holewise.running.Settings;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The least that keeps a hand-in: an HTTP server that writes its rows (the hand-in, two members,
 * the job) in one transaction, and does nothing else. What handing in costs is told as a multiple
 * of it.
 */
final class BareInserts implements AutoCloseable {

  /** As many bytes as a hand-in of the exercise has. */
  private static final String DOCUMENT = "R1 b10 b15 marked 150R\n".repeat(11);

  /** As many as the school has. */
  private static final int BENCHES = LoadScript.SIZE.classes() * LoadScript.SIZE.benches();

  private static final int CONNECTIONS = 10;

  private final HikariDataSource source = new HikariDataSource();
  private final JdbcClient db = JdbcClient.create(source);
  private final TransactionTemplate transaction =
      new TransactionTemplate(new JdbcTransactionManager(source));
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final HttpClient client = HttpClient.newHttpClient();
  private final HttpServer server;

  BareInserts(Settings settings) throws IOException {
    source.setJdbcUrl(settings.url());
    source.setUsername(settings.user());
    source.setPassword(settings.password());
    source.setMaximumPoolSize(CONNECTIONS);
    Flyway.configure().dataSource(source).locations("classpath:db/common").load().migrate();
    rowsForForeignKeys();
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext("/", this::insert);
    server.start();
  }

  private void rowsForForeignKeys() {
    db.sql(
            """
            insert into people (name, sign_in_name, role, made_at)
            values ('Wren', 'wren', 'STUDENT', current_timestamp),
              ('Sorrel', 'sorrel', 'STUDENT', current_timestamp)
            """)
        .update();
    db.sql("insert into class_groups (name, made_at) values ('9', current_timestamp)").update();
    db.sql(
            """
            insert into exercise_versions (slug, sha256, document, made_at)
            values ('x', 'x', 'x', current_timestamp)
            """)
        .update();
    db.sql(
            """
            insert into lab_sessions (class_group, exercise_version, planned_for, hint_step,
              look_first, made_by, made_at)
            values (1, 1, current_date, 'PLACE', false, 1, current_timestamp)
            """)
        .update();
    for (int i = 1; i <= BENCHES; i++) {
      db.sql("insert into benches (lab_session, number) values (1, ?)").param(i).update();
    }
  }

  /** Asks for one insert and waits for its answer. */
  void ask(int number) throws IOException, InterruptedException {
    var address = server.getAddress();
    var path = "http://localhost:" + address.getPort() + "/" + (number % BENCHES + 1);
    var answer =
        client.send(HttpRequest.newBuilder(URI.create(path)).build(), BodyHandlers.discarding());
    if (answer.statusCode() != HttpStatus.NO_CONTENT.value()) {
      throw new IOException("bare insert: " + answer.statusCode());
    }
  }

  private void insert(HttpExchange exchange) throws IOException {
    long bench = Long.parseLong(exchange.getRequestURI().getPath().substring(1));
    int status = HttpStatus.NO_CONTENT.value();
    try {
      transaction.executeWithoutResult(all -> insert(bench));
    } catch (RuntimeException failed) {
      status = HttpStatus.INTERNAL_SERVER_ERROR.value();
    }
    exchange.sendResponseHeaders(status, -1);
    exchange.close();
  }

  private void insert(long bench) {
    String key = UUID.randomUUID().toString();
    db.sql(
            """
            insert into hand_ins (bench, number, request_key, request_sha256, document, handed_by,
              handed_at)
            select ?, count(*) + 1, ?, ?, ?, 1, ? from hand_ins where bench = ?
            """)
        .params(bench, key, key, DOCUMENT, OffsetDateTime.now(ZoneOffset.UTC), bench)
        .update();
    long id =
        db.sql("select id from hand_ins where bench = ? and request_key = ?")
            .params(bench, key)
            .query(Long.class)
            .single();
    db.sql("insert into hand_in_members (hand_in, person) values (?, 1), (?, 2)")
        .params(id, id)
        .update();
    db.sql("insert into marking_jobs (hand_in, answers) values (?, 0)").param(id).update();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
    source.close();
  }
}
