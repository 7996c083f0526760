package org.holewise.school.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.holewise.running.Office;
import org.holewise.school.session.LabSession;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What holds of the ledger on every kind of database. */
abstract class LedgerContract {

  private static final LocalDate DAY = LocalDate.of(2031, 3, 4);
  private static final int PEOPLE = 8;

  private final Office office;
  private final StageStore store;

  LedgerContract(Store database) {
    office = new Office(database);
    store = new StageStore(office);
  }

  @AfterEach
  void close() {
    office.close();
  }

  private LabSession session() {
    return store.planned("stage-cue", DAY, 15);
  }

  @Test
  void holdsWhatWasDeliveredLessWhatIsOut() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    assertThat(store.pack(session(), lamps, 15)).isEqualTo(new Outcome.Kept());
    assertThat(store.level(lamps)).isEqualTo(new Level(lamps, 35, 15));
  }

  @Test
  void tellsWhatBecameOfWhatWasPacked() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    var session = session();
    store.pack(session, lamps, 15);
    var outcome =
        store.write(
            Optional.of(session.id()),
            Slip.Line.of(lamps.id(), Act.RETURNED, 11),
            Slip.Line.of(lamps.id(), Act.USED_UP, 1),
            Slip.Line.of(lamps.id(), Act.BROKEN_IN_CLASS, 2));
    assertThat(outcome).isEqualTo(new Outcome.Kept());
    assertThat(store.movements.of(List.of(session.id())))
        .containsExactly(new Use(session.id(), lamps.id(), 15, 1, 1, 2));
    assertThat(store.level(lamps)).isEqualTo(new Level(lamps, 46, 1));
  }

  @Test
  void doesNotPackMoreThanThereIsAndThenMovesNothingAtAll() {
    var lamps = store.stocked("Red lamp", "led red", 10);
    var buttons = store.stocked("Button", "button", 10);
    var outcome =
        store.write(
            Optional.of(session().id()),
            Slip.Line.of(lamps.id(), Act.PACKED, 5),
            Slip.Line.of(buttons.id(), Act.PACKED, 11));
    assertThat(outcome)
        .isEqualTo(new Outcome.TooFew(List.of(new Outcome.Shortage(buttons, Place.STORE, 10))));
    assertThat(store.level(lamps).inStore()).isEqualTo(10);
    assertThat(store.level(buttons).inStore()).isEqualTo(10);
  }

  @Test
  void doesNotTakeMoreBackFromAClassThanItHas() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    var first = session();
    var second = session();
    store.pack(first, lamps, 15);
    store.pack(second, lamps, 5);
    var outcome =
        store.write(
            Optional.of(second.id()),
            Slip.Line.of(lamps.id(), Act.RETURNED, 5),
            Slip.Line.of(lamps.id(), Act.BROKEN_IN_CLASS, 1));
    assertThat(outcome)
        .isEqualTo(new Outcome.TooFew(List.of(new Outcome.Shortage(lamps, Place.CLASS, 5))));
    assertThat(store.level(lamps).withClasses()).isEqualTo(20);
  }

  @Test
  void movesNothingTwiceForAFormThatCameTwice() {
    var lamps = store.item("Red lamp", "led red");
    var slip = delivery(lamps, StageStore.newKey(), 20);
    assertThat(store.ledger.write(store.technician, slip)).isEqualTo(new Outcome.Kept());
    assertThat(store.ledger.write(store.technician, slip)).isEqualTo(new Outcome.Already());
    assertThat(store.level(lamps).inStore()).isEqualTo(20);
    assertThat(store.rows(lamps)).hasSize(1);
  }

  @Test
  void movesNothingTwiceForAFormThatCameManyTimesAtOnce() {
    var lamps = store.item("Red lamp", "led red");
    var slip = delivery(lamps, StageStore.newKey(), 20);
    var outcomes = atOnce(number -> store.ledger.write(store.technician, slip));
    assertThat(outcomes).containsOnlyOnce(new Outcome.Kept());
    assertThat(outcomes.stream().filter(new Outcome.Already()::equals)).hasSize(PEOPLE - 1);
    assertThat(store.rows(lamps)).hasSize(1);
  }

  @Test
  void letsPackersAtTheSameTimeTakeNoMoreThanThereIs() {
    var lamps = store.stocked("Red lamp", "led red", 20);
    var buttons = store.stocked("Button", "button", 100);
    var session = session();
    var outcomes =
        atOnce(
            number -> {
              var lines =
                  new ArrayList<>(
                      List.of(
                          Slip.Line.of(lamps.id(), Act.PACKED, 7),
                          Slip.Line.of(buttons.id(), Act.PACKED, 1)));
              Collections.rotate(lines, number);
              return store.write(Optional.of(session.id()), lines.toArray(Slip.Line[]::new));
            });
    assertThat(outcomes.stream().filter(new Outcome.Kept()::equals)).hasSize(2);
    assertThat(outcomes.stream().filter(Outcome.TooFew.class::isInstance)).hasSize(PEOPLE - 2);
    assertThat(store.level(lamps)).isEqualTo(new Level(lamps, 6, 14));
    assertThat(store.level(buttons)).isEqualTo(new Level(buttons, 98, 2));
  }

  @Test
  void isSetToWhatWasCounted() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    assertThat(count(lamps, 50, 47)).isEqualTo(new Outcome.Kept());
    assertThat(store.level(lamps).inStore()).isEqualTo(47);
    assertThat(count(lamps, 47, 60)).isEqualTo(new Outcome.Kept());
    assertThat(store.level(lamps).inStore()).isEqualTo(60);
    assertThat(count(lamps, 60, 60)).isEqualTo(new Outcome.Agrees());
    assertThat(store.rows(lamps))
        .extracting(Movement::act)
        .containsExactly(Act.COUNTED_MORE, Act.COUNTED_LESS, Act.DELIVERED);
  }

  @Test
  void doesNotTakeACountThatWasOvertaken() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    store.pack(session(), lamps, 15);
    assertThat(count(lamps, 50, 48)).isEqualTo(new Outcome.Moved(35));
    assertThat(store.level(lamps).inStore()).isEqualTo(35);
  }

  @Test
  void takesAMistakeBackOnceAndKeepsBoth() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    var session = session();
    store.pack(session, lamps, 15);
    var wrong = store.rows(lamps).get(0);
    assertThat(store.ledger.putRight(store.technician, lamps, wrong, ""))
        .isEqualTo(new Outcome.Kept());
    assertThat(store.ledger.putRight(store.technician, lamps, wrong, ""))
        .isEqualTo(new Outcome.Already());
    assertThat(store.rows(lamps)).hasSize(3);
    assertThat(store.rows(lamps).get(0).counter()).isTrue();
    assertThat(store.rows(lamps).get(0).act()).isEqualTo(Act.PACKED);
    assertThat(store.rows(lamps).get(1).countered()).isTrue();
    assertThat(store.level(lamps)).isEqualTo(new Level(lamps, 50, 0));
    assertThat(store.movements.of(List.of(session.id())))
        .containsExactly(new Use(session.id(), lamps.id(), 0, 0, 0, 0));
  }

  @Test
  void putsAReturnRightWithoutCallingItPacked() {
    var lamps = store.stocked("Red lamp", "led red", 50);
    var session = session();
    store.pack(session, lamps, 15);
    store.write(Optional.of(session.id()), Slip.Line.of(lamps.id(), Act.RETURNED, 15));
    store.ledger.putRight(store.technician, lamps, store.rows(lamps).get(0), "");
    assertThat(store.movements.of(List.of(session.id())))
        .containsExactly(new Use(session.id(), lamps.id(), 15, 15, 0, 0));
  }

  @Test
  void doesNotTakeBackWhatIsNoLongerThere() {
    var lamps = store.stocked("Red lamp", "led red", 20);
    var delivery = store.rows(lamps).get(0);
    store.pack(session(), lamps, 15);
    assertThat(store.ledger.putRight(store.technician, lamps, delivery, ""))
        .isEqualTo(new Outcome.TooFew(List.of(new Outcome.Shortage(lamps, Place.STORE, 5))));
  }

  @Test
  void showsTheBalanceAfterEachRowAndCanBeReadInParts() {
    var lamps = store.stocked("Red lamp", "led red", 20);
    store.pack(session(), lamps, 5);
    count(lamps, 15, 14);
    assertThat(store.rows(lamps)).extracting(Movement::inStore).containsExactly(14, 15, 20);
    long last = store.rows(lamps).get(0).id();
    assertThat(store.movements.of(lamps, last, 1))
        .extracting(Movement::inStore)
        .containsExactly(15);
    assertThat(store.rows(lamps).get(1).session().orElseThrow().day()).isEqualTo(DAY);
  }

  @Test
  void notesWhoMovedWhat() {
    var lamps = store.stocked("Red lamp", "led red", 20);
    var noted =
        office
            .part(JdbcClient.class)
            .sql(
                "select act from audit_events where subject = 'item' and subject_id = ? order by id")
            .param(lamps.id())
            .query(String.class)
            .list();
    assertThat(noted).containsExactly("stock.added", "stock.delivered");
  }

  @Test
  void addsUpAfterAnyHistory() {
    new RandomHistory(store, List.of(session(), session())).runs(300, 20310304);
  }

  private Outcome count(Item item, int shown, int there) {
    return store.ledger.count(
        store.technician, StageStore.newKey(), item.id(), shown, there, "by hand");
  }

  private static Slip delivery(Item item, String key, int quantity) {
    var line = Slip.Line.of(item.id(), Act.DELIVERED, quantity);
    return new Slip(key, Optional.empty(), "", List.of(line));
  }

  private static List<Outcome> atOnce(IntFunction<Outcome> act) {
    var crowd = Executors.newFixedThreadPool(PEOPLE);
    try {
      List<Callable<Outcome>> acts =
          IntStream.range(0, PEOPLE)
              .<Callable<Outcome>>mapToObj(number -> () -> act.apply(number))
              .toList();
      var outcomes = new ArrayList<Outcome>();
      for (var done : crowd.invokeAll(acts)) {
        outcomes.add(done.get());
      }
      return outcomes;
    } catch (InterruptedException | ExecutionException e) {
      throw new IllegalStateException(e);
    } finally {
      crowd.shutdownNow();
    }
  }
}
