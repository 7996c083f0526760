package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;

/** What holds of the people on every kind of database. */
abstract class PeopleContract {

  private static final String PASSWORD = "violet kettle under seven ladders";

  private final PasswordEncoder encoder =
      PasswordEncoderFactories.createDelegatingPasswordEncoder();
  private final JdbcClient db;
  private final People people;

  PeopleContract(Store store) {
    db = store.migrated();
    people = new People(db, encoder, new HandClock());
  }

  @Test
  void areFoundByTheirNameInAnyCaseAndForm() {
    var mara = people.add(" Mara  Lindqvist", Role.TEACHER, PASSWORD);
    assertThat(people.named("mara lindqvist")).contains(mara);
    // U+FF2D is the fullwidth form of M: one letter under NFKC (Unicode, UAX #15).
    assertThat(people.named("\uFF2DARA LINDQVIST ")).contains(mara);
    assertThat(people.named("Mara")).isEmpty();
  }

  @Test
  void haveDifferentNames() {
    people.add("Mara Lindqvist", Role.TEACHER, PASSWORD);
    assertThatThrownBy(() -> people.add("MARA LINDQVIST", Role.STUDENT, PASSWORD))
        .isInstanceOf(DuplicateKeyException.class);
    assertThat(people.all()).extracting(Person::name).containsExactly("Mara Lindqvist");
  }

  @Test
  void signInWithTheirPasswordAndRole() {
    people.add("Mara Lindqvist", Role.TECHNICIAN, PASSWORD);
    var signedIn = people.loadUserByUsername("mara lindqvist");
    assertThat(encoder.matches(PASSWORD, signedIn.getPassword())).isTrue();
    assertThat(signedIn.getAuthorities())
        .extracting("authority")
        .containsExactly("ROLE_TECHNICIAN");
  }

  @Test
  void doNotSignInWithoutAPassword() {
    people.addWithoutPassword("Demo teacher", Role.TEACHER);
    assertThat(people.named("Demo teacher")).isPresent();
    assertThatThrownBy(() -> people.loadUserByUsername("Demo teacher"))
        .isInstanceOf(UsernameNotFoundException.class);
  }

  @Test
  void keepNoPasswordAsItIs() {
    people.add("Mara Lindqvist", Role.TEACHER, PASSWORD);
    var kept = db.sql("select password_hash from people").query(String.class).single();
    assertThat(kept).startsWith("{bcrypt}").doesNotContain(PASSWORD);
  }

  @Test
  void knowWhetherOneIsAnAdministrator() {
    people.add("Mara Lindqvist", Role.TEACHER, PASSWORD);
    assertThat(people.haveAnAdministrator()).isFalse();
    people.add("Tom Okafor", Role.ADMINISTRATOR, PASSWORD);
    assertThat(people.haveAnAdministrator()).isTrue();
  }
}
