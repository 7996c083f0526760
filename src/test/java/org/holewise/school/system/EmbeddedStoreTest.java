package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tidying a file that has grown, and what an interrupted one leaves behind. */
class EmbeddedStoreTest {
  private static final int ROWS = 50;
  private static final int ROUNDS = 40;
  private static final String LONG = "x".repeat(2_000);

  private Path data;
  private EmbeddedStore store;

  /** As a server that was killed leaves it: rows replaced again and again, nothing closed. */
  @BeforeEach
  void grow(@TempDir Path directory) throws SQLException {
    store = new EmbeddedStore(directory.resolve("school"));
    data = directory.resolve("school.mv.db");
    try (var open = open();
        var statement = open.createStatement()) {
      statement.execute("create table note (id int primary key, text varchar)");
      for (int round = 0; round < ROUNDS; round++) {
        for (int id = 0; id < ROWS; id++) {
          statement.execute(
              "merge into note values (" + id + ", '" + round + "-" + id + LONG + "')");
        }
      }
      open.setAutoCommit(false);
      statement.execute("delete from note");
      statement.execute("shutdown immediately");
    } catch (SQLException closed) {
      // It is closed under the statement's own feet.
    }
  }

  private Connection open() throws SQLException {
    return DriverManager.getConnection(
        store.getJdbcUrl(), store.getUsername(), store.getPassword());
  }

  private void assertWhole() throws SQLException {
    try (var open = open();
        var statement = open.createStatement();
        var rows = statement.executeQuery("select id, text from note order by id")) {
      for (int id = 0; id < ROWS; id++) {
        assertThat(rows.next()).isTrue();
        assertThat(rows.getString("text")).isEqualTo(ROUNDS - 1 + "-" + id + LONG);
      }
      assertThat(rows.next()).isFalse();
    }
  }

  @Test
  void makesALargeFileSmallAndKeepsWhatWasAcknowledged() throws Exception {
    long before = Files.size(data);
    store.tidy(1);
    assertThat(Files.size(data)).isLessThan(before / 4);
    assertWhole();
  }

  @Test
  void leavesASmallFileAlone() throws Exception {
    byte[] before = Files.readAllBytes(data);
    store.tidy(before.length + 1L);
    assertThat(Files.readAllBytes(data)).isEqualTo(before);
    assertWhole();
  }

  @Test
  void doesNotMindWhatAnInterruptedOneLeft() throws Exception {
    Path half = data.resolveSibling("school.mv.db.tempFile");
    Files.writeString(half, "half a copy");
    store.tidy(1);
    assertThat(half).doesNotExist();
    assertWhole();
  }

  @Test
  void keepsAFileThatCannotBeReadAsItIs() throws IOException {
    Files.writeString(data, "no store at all");
    store.tidy(1);
    assertThat(Files.readString(data)).isEqualTo("no store at all");
  }
}
