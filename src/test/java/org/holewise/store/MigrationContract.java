package org.holewise.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the migrations do on every kind of database. */
abstract class MigrationContract {

  /** A bench of two hand-ins, each with a cause. */
  private static final List<String> CONFIRMED_BEFORE =
      List.of(
          "insert into people (name, sign_in_name, role, made_at)"
              + " values ('Orla', 'orla', 'TEACHER', current_timestamp)",
          "insert into class_groups (name, made_at) values ('9 Lanterns', current_timestamp)",
          "insert into exercise_versions (slug, sha256, document, made_at)"
              + " values ('lamp', 'x', 'x', current_timestamp)",
          "insert into lab_sessions (class_group, exercise_version, planned_for, hint_step,"
              + " look_first, made_by, made_at) select g.id, v.id, current_date, 'PLACE', false,"
              + " p.id, current_timestamp from class_groups g, exercise_versions v, people p",
          "insert into benches (lab_session, number) select id, 1 from lab_sessions",
          handIn(1),
          handIn(2),
          confirmed(1, "touching", "e5 f9", "seen"),
          confirmed(2, "none", "", ""));

  private static String handIn(int number) {
    return "insert into hand_ins (bench, number, request_key, request_sha256, document, handed_by,"
        + " handed_at) select b.id, %d, 'k%d', 'x', 'x', p.id, current_timestamp"
            .formatted(number, number)
        + " from benches b, people p";
  }

  private static String confirmed(int number, String kind, String place, String note) {
    return "insert into confirmations (hand_in, kind, place, note, made_by, made_at) select h.id,"
        + " '%s', '%s', '%s', h.handed_by, current_timestamp from hand_ins h where h.number = %d"
            .formatted(kind, place, note, number);
  }

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
  void makeCausesOfWhatTeachersHadConfirmed() {
    var data = store.empty();
    migrate(data, "87");
    var db = JdbcClient.create(data);
    for (String insert : CONFIRMED_BEFORE) {
      db.sql(insert).update();
    }
    migrate(data, "latest");
    var causes =
        db.sql("select number, source, kind, place, note from causes order by number").query();
    assertThat(causes.listOfRows())
        .extracting(row -> String.join(" ", row.values().stream().map(String::valueOf).toList()))
        .containsExactly("1 TEACHER touching e5 f9 seen", "2 TEACHER none  ");
    assertThat(db.sql("select causes from cause_count").query(Integer.class).single()).isEqualTo(2);
  }

  private static void migrate(DataSource data, String target) {
    Flyway.configure()
        .dataSource(data)
        .locations("classpath:db/common")
        .target(target)
        .load()
        .migrate();
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
