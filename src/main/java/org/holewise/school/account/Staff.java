package org.holewise.school.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who works at the school, and their accounts. An account is taken away, never deleted: what its
 * person did still points to them.
 */
@Repository
class Staff {

  private static final String SUBJECT = "person";

  private static final String SELECT =
      "select id, name, role, made_at, left_at from people where role <> 'STUDENT'";

  private final JdbcClient db;
  private final People people;
  private final ApiTokens tokens;
  private final PasswordEncoder encoder;
  private final Audit audit;
  private final Clock clock;

  Staff(
      JdbcClient db,
      People people,
      ApiTokens tokens,
      PasswordEncoder encoder,
      Audit audit,
      Clock clock) {
    this.db = db;
    this.people = people;
    this.tokens = tokens;
    this.encoder = encoder;
    this.audit = audit;
    this.clock = clock;
  }

  /** All who have or had an account, by name. */
  List<StaffMember> all() {
    return db.sql(SELECT + " order by sign_in_name").query(Staff::member).list();
  }

  Optional<StaffMember> find(long id) {
    return db.sql(SELECT + " and id = ?").param(id).query(Staff::member).optional();
  }

  /** Adds somebody; a taken name is a DuplicateKeyException. */
  @Transactional
  public Person add(Person actor, String name, Role role, String password) {
    var added = people.add(name, role, password);
    audit.note(actor, "person.added", SUBJECT, added.id());
    return added;
  }

  /** Gives somebody a new first password, and the account back where it was taken away. */
  @Transactional
  public void admit(Person actor, StaffMember member, String password) {
    setPassword(member.person(), password);
    db.sql("update people set left_at = null where id = ?").param(member.person().id()).update();
    String act = member.left().isPresent() ? "person.returned" : "password.set";
    audit.note(actor, act, SUBJECT, member.person().id());
  }

  /** Somebody chose a new password of their own. */
  @Transactional
  public void changePassword(Person person, String password) {
    setPassword(person, password);
    audit.note(person, "password.changed", SUBJECT, person.id());
  }

  boolean isPasswordOf(Person person, String password) {
    return passwordHash(person).filter(hash -> encoder.matches(password, hash)).isPresent();
  }

  boolean hasPassword(Person person) {
    return passwordHash(person).isPresent();
  }

  /**
   * Takes somebody's account away, and their tokens; false where they are the last administrator.
   */
  @Transactional
  public boolean dismiss(Person actor, StaffMember member) {
    long id = member.person().id();
    // Locked, so that two administrators cannot take each other away at once.
    var administrators =
        db.sql(
                """
                select id from people where role = 'ADMINISTRATOR' and left_at is null
                order by id for update
                """)
            .query(Long.class)
            .list();
    if (administrators.equals(List.of(id))) {
      return false;
    }
    int left =
        db.sql("update people set left_at = ? where id = ? and left_at is null")
            .params(OffsetDateTime.now(clock), id)
            .update();
    if (left == 1) {
      tokens.revokeAll(member.person());
      audit.note(actor, "person.left", SUBJECT, id);
    }
    return true;
  }

  private void setPassword(Person person, String password) {
    db.sql("update people set password_hash = ? where id = ?")
        .params(encoder.encode(password), person.id())
        .update();
  }

  private Optional<String> passwordHash(Person person) {
    return db.sql("select password_hash from people where id = ? and password_hash is not null")
        .param(person.id())
        .query(String.class)
        .optional();
  }

  private static StaffMember member(ResultSet row, int number) throws SQLException {
    return new StaffMember(
        People.person(row, number), Instants.of(row, "made_at"), Instants.maybe(row, "left_at"));
  }
}
