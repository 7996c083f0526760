package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.NoOpPasswordEncoder;
import org.springframework.transaction.support.TransactionTemplate;

/** What holds of the staff on every kind of database. */
abstract class StaffContract {

  private static final String PASSWORD = "violet kettle under seven ladders";

  private final HandClock clock = new HandClock();
  private final TransactionTemplate transaction;
  private final People people;
  private final ApiTokens tokens;
  private final Audit audit;
  private final Staff staff;
  private final Person ada;

  StaffContract(Store store) {
    var data = store.migratedData();
    var db = JdbcClient.create(data);
    var encoder = NoOpPasswordEncoder.getInstance();
    transaction = new TransactionTemplate(new DataSourceTransactionManager(data));
    people = new People(db, encoder, clock);
    tokens = new ApiTokens(db, new SecureRandom(), clock);
    audit = new Audit(db, clock);
    staff = new Staff(db, people, tokens, encoder, audit, clock);
    ada = people.add("Ada", Role.ADMINISTRATOR, PASSWORD);
  }

  @Test
  void areAllButTheStudentsByName() {
    people.addStudent("Wren");
    staff.add(ada, "tom", Role.TEACHER, PASSWORD);
    staff.add(ada, "Bea", Role.TECHNICIAN, PASSWORD);
    assertThat(staff.all())
        .extracting(one -> one.person().name())
        .containsExactly("Ada", "Bea", "tom");
    long student = people.addStudent("Sorrel").id();
    assertThat(staff.find(student)).isEmpty();
  }

  @Test
  void haveDifferentNames() {
    assertThatThrownBy(() -> staff.add(ada, "ADA", Role.TEACHER, PASSWORD))
        .isInstanceOf(DuplicateKeyException.class);
  }

  @Test
  void whoIsDismissedCannotSignInNorCanTheirPrograms() {
    var tom = staff.add(ada, "Tom", Role.TEACHER, PASSWORD);
    String token = tokens.make(tom, "lab printer");
    assertThat(staff.dismiss(ada, member(tom))).isTrue();
    assertThatThrownBy(() -> people.loadUserByUsername("Tom"))
        .isInstanceOf(UsernameNotFoundException.class);
    assertThat(tokens.holder(token)).isEmpty();
    assertThat(member(tom).left()).contains(clock.instant());
    assertThat(people.named("Tom")).contains(tom);
  }

  @Test
  void whoIsDismissedCanComeBackWithANewPasswordButWithoutTheOldTokens() {
    var tom = staff.add(ada, "Tom", Role.TEACHER, PASSWORD);
    String token = tokens.make(tom, "lab printer");
    staff.dismiss(ada, member(tom));
    staff.admit(ada, member(tom), "another kettle under ladders");
    assertThat(people.loadUserByUsername("Tom").getPassword())
        .isEqualTo("another kettle under ladders");
    assertThat(member(tom).left()).isEmpty();
    assertThat(tokens.holder(token)).isEmpty();
  }

  @Test
  void theLastAdministratorStays() {
    staff.add(ada, "Tom", Role.TEACHER, PASSWORD);
    assertThat(staff.dismiss(ada, member(ada))).isFalse();
    var bea = staff.add(ada, "Bea", Role.ADMINISTRATOR, PASSWORD);
    assertThat(staff.dismiss(ada, member(ada))).isTrue();
    assertThat(staff.dismiss(bea, member(bea))).isFalse();
    assertThat(people.haveAnAdministrator()).isTrue();
  }

  @Test
  void twoAdministratorsCannotTakeEachOtherAwayAtOnce() throws Exception {
    var bea = staff.add(ada, "Bea", Role.ADMINISTRATOR, PASSWORD);
    Callable<Boolean> first = () -> transaction.execute(t -> staff.dismiss(ada, member(bea)));
    Callable<Boolean> second = () -> transaction.execute(t -> staff.dismiss(bea, member(ada)));
    var threads = Executors.newFixedThreadPool(2);
    var done = threads.invokeAll(List.of(first, second));
    threads.shutdown();
    assertThat(List.of(done.get(0).get(), done.get(1).get())).containsOnlyOnce(true);
    assertThat(people.haveAnAdministrator()).isTrue();
  }

  @Test
  void passwordsAreKnownByWhoHasThem() {
    assertThat(staff.isPasswordOf(ada, PASSWORD)).isTrue();
    staff.changePassword(ada, "another kettle under ladders");
    assertThat(staff.isPasswordOf(ada, PASSWORD)).isFalse();
    assertThat(staff.isPasswordOf(ada, "another kettle under ladders")).isTrue();
    var demo = people.addWithoutPassword("Demo teacher", Role.TEACHER);
    assertThat(staff.hasPassword(demo)).isFalse();
    assertThat(staff.isPasswordOf(demo, "")).isFalse();
  }

  @Test
  void everyActIsNotedWithWhoDidIt() {
    var tom = staff.add(ada, "Tom", Role.TEACHER, PASSWORD);
    staff.admit(ada, member(tom), PASSWORD);
    staff.dismiss(ada, member(tom));
    staff.dismiss(ada, member(tom));
    staff.admit(ada, member(tom), PASSWORD);
    staff.changePassword(tom, PASSWORD);
    assertThat(audit.before(Long.MAX_VALUE, 100))
        .allMatch(event -> event.isAbout("person") && event.subjectId() == tom.id())
        .extracting(AuditEvent::act, AuditEvent::actorName)
        .map(Object::toString)
        .containsExactly(
            "(\"password.changed\", \"Tom\")",
            "(\"person.returned\", \"Ada\")",
            "(\"person.left\", \"Ada\")",
            "(\"password.set\", \"Ada\")",
            "(\"person.added\", \"Ada\")");
  }

  private StaffMember member(Person person) {
    return staff.find(person.id()).orElseThrow();
  }
}
