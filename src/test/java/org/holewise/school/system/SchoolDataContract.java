package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.holewise.school.system.School.Kind;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What holds of the marker that says whose the data are, on every kind of database. */
abstract class SchoolDataContract {

  private final DataSource store;

  SchoolDataContract(Store store) {
    this.store = store.empty();
  }

  @Test
  void areOpenedAgainByTheSameKind() {
    open(Kind.SCHOOL);
    open(Kind.SCHOOL);
    assertThat(
            JdbcClient.create(store)
                .sql("select kind from installation")
                .query(String.class)
                .list())
        .containsExactly("SCHOOL");
  }

  @Test
  void ofADemoAreRefusedToASchool() {
    open(Kind.DEMO);
    assertThatThrownBy(() -> open(Kind.SCHOOL))
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("belong to a demo school");
  }

  @Test
  void ofASchoolAreRefusedToADemo() {
    open(Kind.SCHOOL);
    assertThatThrownBy(() -> open(Kind.DEMO))
        .isInstanceOf(RefusedStart.class)
        .hasMessageContaining("belong to a school");
  }

  @Test
  void areNotChangedByARefusedStart() {
    open(Kind.DEMO);
    var db = JdbcClient.create(store);
    // As if a later version, with one migration more, came to these data.
    db.sql("delete from \"flyway_schema_history\" where \"version\" = '003'").update();
    db.sql("drop index api_tokens_by_person").update();
    assertThatThrownBy(() -> open(Kind.SCHOOL)).isInstanceOf(RefusedStart.class);
    assertThat(
            db.sql("select \"version\" from \"flyway_schema_history\"").query(String.class).list())
        .doesNotContain("003");
  }

  private void open(Kind kind) {
    var flyway = Flyway.configure().dataSource(store).locations("classpath:db/common").load();
    new SchoolData(new School(kind), new HandClock()).migrate(flyway);
  }
}
