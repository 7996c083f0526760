package org.holewise.school.roster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.holewise.school.account.AccountFixture;
import org.holewise.school.account.Person;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What holds of classes, students and cards on every kind of database. */
abstract class RosterContract {

  private final HandClock clock = new HandClock();
  private final TransactionTemplate transaction;
  private final JdbcClient db;
  private final Classes classes;
  private final Cards cards;

  RosterContract(Store store) {
    var data = store.migratedData();
    transaction = new TransactionTemplate(new DataSourceTransactionManager(data));
    db = JdbcClient.create(data);
    classes = new Classes(db, AccountFixture.people(db, clock), clock);
    cards = new Cards(db, new SecureRandom(), clock);
  }

  @Test
  void classesHaveDifferentNames() {
    var group = classes.add(" 9b ");
    assertThat(group.name()).isEqualTo("9b");
    assertThatThrownBy(() -> classes.add("9b")).isInstanceOf(DuplicateKeyException.class);
    assertThat(classes.named("9B")).contains(group);
    var other = classes.add("9c");
    assertThatThrownBy(() -> classes.rename(other, "9b")).isInstanceOf(DuplicateKeyException.class);
    assertThat(classes.rename(other, "10c")).isTrue();
    assertThat(classes.all()).extracting(ClassGroup::name).containsExactly("10c", "9b");
  }

  @Test
  void classesKnowHowManyAreInThem() {
    var group = classes.add("9b");
    classes.add("9c");
    classes.addStudent(group, "Wren");
    classes.addStudent(group, "Wren");
    assertThat(classes.sizes())
        .extracting(size -> size.group().name() + " " + size.students())
        .containsExactly("9b 2", "9c 0");
  }

  @Test
  void aRollIsByNameWithTheDayOfEachCard() {
    var group = classes.add("9b");
    var wren = classes.addStudent(group, "wren");
    var sorrel = classes.addStudent(group, "Sorrel");
    cards.make(wren);
    var roll = classes.roll(group);
    assertThat(roll).extracting(Enrolled::student).containsExactly(sorrel, wren);
    assertThat(roll.get(0).card()).isEmpty();
    assertThat(roll.get(1).card()).contains(clock.instant());
    assertThat(classes.enrolled(group, wren.id())).contains(roll.get(1));
    assertThat(classes.enrolled(classes.add("9c"), wren.id())).isEmpty();
  }

  @Test
  void aStudentIsPlacedOnceAndOnlyAStudent() {
    var group = classes.add("9b");
    var wren = classes.addStudent(group, "Wren");
    assertThat(classes.place(group, wren.id())).isFalse();
    var other = classes.add("9c");
    assertThat(classes.place(other, wren.id())).isTrue();
    assertThat(classes.of(wren)).containsExactly(group, other);
    var tom = AccountFixture.teacher(db, clock, "Tom");
    assertThat(classes.place(group, tom.id())).isFalse();
  }

  @Test
  void whoIsInNoClassIsListedAndTheirCardDoesNotWork() {
    var group = classes.add("9b");
    var wren = classes.addStudent(group, "Wren");
    String code = cards.make(wren);
    assertThat(cards.holder(code)).contains(wren);
    assertThat(classes.withoutClass()).isEmpty();
    assertThat(classes.remove(group, wren.id())).isTrue();
    assertThat(cards.holder(code)).isEmpty();
    assertThat(classes.withoutClass()).containsExactly(wren);
    classes.place(group, wren.id());
    assertThat(cards.holder(code)).contains(wren);
  }

  @Test
  void whoLeftTheSchoolComesInByNoCard() {
    var group = classes.add("9b");
    var wren = classes.addStudent(group, "Wren");
    String code = cards.make(wren);
    db.sql("update people set left_at = made_at where id = ?").param(wren.id()).update();
    assertThat(cards.holder(code)).isEmpty();
  }

  @Test
  void aNewCardEndsTheOneBeforeAndNoCodeIsKept() {
    var wren = classes.addStudent(classes.add("9b"), "Wren");
    String first = cards.make(wren);
    String second = cards.make(wren);
    assertThat(first).matches("([A-Z0-9]{5}-){2}[A-Z0-9]{5}").isNotEqualTo(second);
    assertThat(cards.holder(first)).isEmpty();
    assertThat(cards.holder(second)).contains(wren);
    var kept = db.sql("select code_hash from cards").query(String.class).list();
    assertThat(kept).singleElement().asString().matches("[0-9a-f]{64}");
  }

  @Test
  void aButtonPressedTwiceMakesOneCardAfterTheOther() throws Exception {
    var wren = classes.addStudent(classes.add("9b"), "Wren");
    Callable<String> press = () -> transaction.execute(t -> cards.make(wren));
    var threads = Executors.newFixedThreadPool(2);
    var codes = threads.invokeAll(List.of(press, press, press, press));
    threads.shutdown();
    int alive = 0;
    for (var code : codes) {
      alive += cards.holder(code.get()).map(Person::id).isPresent() ? 1 : 0;
    }
    assertThat(alive).isOne();
  }
}
