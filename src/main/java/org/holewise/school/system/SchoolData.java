package org.holewise.school.system;

import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.holewise.school.system.School.Kind;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.CannotGetJdbcConnectionException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Keeps a demo's data and a school's apart: the data say whose they are, and are looked at before
 * anything in them is changed.
 */
@Component
class SchoolData implements FlywayMigrationStrategy {

  /** H2's DATABASE_ALREADY_OPEN_1. */
  private static final int H2_FILE_IN_USE = 90020;

  private final School school;
  private final Clock clock;

  SchoolData(School school, Clock clock) {
    this.school = school;
    this.clock = clock;
  }

  @Override
  public void migrate(Flyway flyway) {
    var db = JdbcClient.create(flyway.getConfiguration().getDataSource());
    if (hasInstallation(connected(db))) {
      kept(db).ifPresent(this::check);
    }
    flyway.migrate();
    check(claim(db));
  }

  private static JdbcClient connected(JdbcClient db) {
    try {
      db.sql("select 1").query(Integer.class).single();
      return db;
    } catch (CannotGetJdbcConnectionException e) {
      if (e.getCause() instanceof SQLException cause && cause.getErrorCode() == H2_FILE_IN_USE) {
        throw new RefusedStart(
            "Another Holewise has these data open.",
            "Stop it first, or name another data folder with --holewise.data.");
      }
      throw e;
    }
  }

  private Kind claim(JdbcClient db) {
    if (kept(db).isEmpty()) {
      try {
        db.sql("insert into installation (id, kind, made_at) values (1, ?, ?)")
            .params(school.kind().name(), OffsetDateTime.now(clock))
            .update();
      } catch (DuplicateKeyException another) {
        return kept(db).orElseThrow();
      }
    }
    return kept(db).orElseThrow();
  }

  private void check(Kind kept) {
    if (kept != school.kind()) {
      throw kept == Kind.DEMO
          ? new RefusedStart(
              "These data belong to a demo school, and this is not a demo.",
              "Name another data folder with --holewise.data (or another database), or start the"
                  + " demo on these data with --spring.profiles.active=demo.")
          : new RefusedStart(
              "These data belong to a school, and a demo must not touch them.",
              "Leave --holewise.data (and spring.datasource.url) away: the demo has a folder of its"
                  + " own.");
    }
  }

  private static boolean hasInstallation(JdbcClient db) {
    return db.sql(
                """
                select count(*) from information_schema.tables
                where table_schema = current_schema and lower(table_name) = 'installation'
                """)
            .query(Integer.class)
            .single()
        > 0;
  }

  private static Optional<Kind> kept(JdbcClient db) {
    return db.sql("select kind from installation where id = 1")
        .query(String.class)
        .optional()
        .map(Kind::valueOf);
  }
}
