package org.holewise.school.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.text.Normalizer;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Repository;

/** The people of the school. Two names that differ only in case or form are one name. */
@Repository
public class People implements UserDetailsService {

  private final JdbcClient db;
  private final PasswordEncoder encoder;
  private final Clock clock;

  People(JdbcClient db, PasswordEncoder encoder, Clock clock) {
    this.db = db;
    this.encoder = encoder;
    this.clock = clock;
  }

  /** Adds a person who signs in with the password; a taken name is a DuplicateKeyException. */
  public Person add(String name, Role role, String password) {
    return insert(name, signInName(name), role, encoder.encode(password));
  }

  /** Adds a student, who comes in by a card; students may share a name. */
  public Person addStudent(String name) {
    return insert(name, "student " + UUID.randomUUID(), Role.STUDENT, null);
  }

  /** Gives a student another name; false where there is no such student. */
  public boolean renameStudent(long student, String name) {
    return db.sql("update people set name = ? where id = ? and role = 'STUDENT'")
            .params(TypedName.tidy(name), student)
            .update()
        == 1;
  }

  /** Adds a person who cannot sign in, only hold tokens. */
  public Person addWithoutPassword(String name, Role role) {
    return insert(name, signInName(name), role, null);
  }

  public Optional<Person> named(String name) {
    return db.sql("select id, name, role from people where sign_in_name = ?")
        .param(signInName(name))
        .query(People::person)
        .optional();
  }

  public List<Person> all() {
    return db.sql("select id, name, role from people order by sign_in_name")
        .query(People::person)
        .list();
  }

  public boolean haveAnAdministrator() {
    return db.sql("select count(*) from people where role = 'ADMINISTRATOR' and left_at is null")
            .query(Integer.class)
            .single()
        > 0;
  }

  @Override
  public SignedIn loadUserByUsername(String name) {
    return db.sql(
            """
            select id, name, role, password_hash from people
            where sign_in_name = ? and password_hash is not null and left_at is null
            """)
        .param(signInName(name))
        .query((row, n) -> new SignedIn(person(row, n), row.getString("password_hash")))
        .optional()
        .orElseThrow(() -> new UsernameNotFoundException("nobody of this name"));
  }

  private Person insert(String name, String signInName, Role role, @Nullable String passwordHash) {
    db.sql(
            """
            insert into people (name, sign_in_name, role, password_hash, made_at)
            values (?, ?, ?, ?, ?)
            """)
        .params(TypedName.tidy(name), signInName, role.name())
        .param(passwordHash)
        .param(OffsetDateTime.now(clock))
        .update();
    return db.sql("select id, name, role from people where sign_in_name = ?")
        .param(signInName)
        .query(People::person)
        .single();
  }

  static String signInName(String name) {
    return TypedName.tidy(Normalizer.normalize(name, Normalizer.Form.NFKC))
        .toLowerCase(Locale.ROOT);
  }

  /** A person from the columns id, name and role. */
  public static Person person(ResultSet row, int number) throws SQLException {
    return new Person(
        row.getLong("id"), row.getString("name"), Role.valueOf(row.getString("role")));
  }
}
