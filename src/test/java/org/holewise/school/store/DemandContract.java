package org.holewise.school.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Optional;
import org.holewise.running.Office;
import org.holewise.school.session.LabSessions;
import org.holewise.school.sheet.Shipped;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;

/** What sessions need and what follows for the store, on every kind of database. */
abstract class DemandContract {

  /** A Monday; the clock of the tests stands on the day after. */
  private static final LocalDate MONDAY = LocalDate.of(2031, 3, 3);

  private final Office office;
  private final StageStore store;

  DemandContract(Store database) {
    office = new Office(database, StoreScene.class);
    store = new StageStore(office);
  }

  @AfterEach
  void close() {
    office.close();
  }

  @Test
  void aKitHasEveryPartOfTheExerciseForEveryBench() {
    var kit = store.packings.of(store.planned("stage-dimmer", MONDAY, 15)).kit();
    assertThat(kit.needs())
        .extracting(need -> need.part().text(), Kit.Need::each, Kit.Need::total)
        .containsExactly(
            tuple("battery 9 V", 1, 15),
            tuple("resistor 1 kΩ", 1, 15),
            tuple("resistor 2.2 kΩ", 1, 15),
            tuple("switch", 1, 15),
            tuple("resistor 4.7 kΩ", 1, 15),
            tuple("board 830-split", 1, 15),
            tuple("meter hand-2000", 1, 15));
  }

  @Test
  void aWeekNeedsWhatItsSessionsNeedTogetherShortFirst() {
    var blue = store.stocked("Blue lamp", "led blue", 40);
    var switches = store.stocked("Switch", "switch", 20);
    var moon = store.planned("stage-moonlight", MONDAY, 15);
    store.planned("stage-dimmer", MONDAY.plusDays(6), 12);
    store.planned("stage-dimmer", MONDAY.plusDays(7), 15);
    store.pack(moon, blue, 15);
    var demand = Demand.of(store.packings.inWeekFrom(MONDAY), store.items.all());
    assertThat(demand.rows())
        .containsExactly(
            new Demand.Row(store.level(switches), 27, 27),
            new Demand.Row(store.level(blue), 15, 0));
    assertThat(demand.rows()).extracting(Demand.Row::lacking).containsExactly(7, 0);
    assertThat(demand.unlisted())
        .containsEntry(new PartKey("supply"), 15)
        .containsEntry(new PartKey("resistor 1 kΩ"), 12)
        .doesNotContainKeys(new PartKey("board 830-split"), new PartKey("switch"));
  }

  @Test
  void ordersAreWhatIsNeededAndTheMinimumLessWhatIsThereInPacks() {
    var red = store.item("Red lamp", "led red", 10, 25);
    var buttons = store.item("Button", "button", 0, 10);
    var wire = store.item("Link wire", "", 5, 4);
    store.write(Optional.empty(), Slip.Line.of(red.id(), Act.DELIVERED, 12));
    store.write(Optional.empty(), Slip.Line.of(buttons.id(), Act.DELIVERED, 20));
    var today = LocalDate.now(office.clock());
    var first = store.planned("stage-cue", today, 8);
    store.planned("stage-cue", today.plusDays(13), 16);
    store.planned("stage-cue", today.plusDays(14), 30);
    store.planned("stage-cue", today.minusDays(1), 30);
    store.pack(first, buttons, 8);
    var orders = Order.of(store.packings.inFortnightFrom(today), store.items.all());
    // Red: 24 needed, 10 at least, 12 there: 22 lack. Buttons: 16 still needed, 12 there: 4 lack.
    assertThat(orders)
        .extracting(order -> order.level().item(), Order::need, Order::packs, Order::quantity)
        .containsExactly(tuple(buttons, 16, 1, 10), tuple(wire, 0, 2, 8), tuple(red, 24, 1, 25));
  }

  @Test
  void aSessionThatIsOverNeedsNothingMore() {
    var today = LocalDate.now(office.clock());
    store.item("Red lamp", "led red");
    var session = store.planned("stage-cue", today, 8);
    var sessions = office.part(LabSessions.class);
    sessions.open(store.teacher, session.id());
    assertThat(Order.of(store.packings.inFortnightFrom(today), store.items.all())).hasSize(1);
    sessions.close(store.teacher, session.id());
    assertThat(Order.of(store.packings.inFortnightFrom(today), store.items.all())).isEmpty();
  }

  @Test
  void anItemHasALabelAndAPartOfItsOwn() {
    var red = store.item("Red lamp", "led red");
    assertThatThrownBy(() -> store.item("Red lamp", "led blue"))
        .isInstanceOf(DuplicateKeyException.class);
    assertThatThrownBy(() -> store.item("Another", "led red"))
        .isInstanceOf(DuplicateKeyException.class);
    store.item("Wire", "");
    store.item("Tape", "");
    var changed = new Item(red.id(), "Lamp", Optional.empty(), "B2", 7, 50);
    store.items.change(store.technician, changed);
    assertThat(store.level(red)).isEqualTo(new Level(changed, 0, 0));
  }

  @Test
  void theModelStagesStoreHasADrawerForEveryPartOfTheLibrary() {
    office.part(StoreScene.class).lay(store.technician);
    var drawers =
        store.items.all().stream().flatMap(level -> level.item().part().stream()).toList();
    for (String slug : Shipped.SLUGS) {
      var kit = store.packings.of(store.planned(slug, MONDAY, 8)).kit();
      assertThat(kit.needs()).isNotEmpty();
      assertThat(kit.needs())
          .extracting(Kit.Need::part)
          .as(slug)
          .allSatisfy(part -> assertThat(drawers).contains(part));
    }
  }

  @Test
  void theModelStagesStoreIsLaidOnceWithSomeThingsShort() {
    var session = store.planned("stage-moonlight", LocalDate.now(office.clock()), 8);
    var scene = office.part(StoreScene.class);
    scene.lay(store.technician);
    scene.lay(store.technician);
    var levels = store.items.all();
    assertThat(levels).hasSizeGreaterThan(30);
    assertThat(levels).extracting(Level::state).contains(Level.State.values());
    assertThat(levels).filteredOn(level -> level.item().part().isEmpty()).hasSize(1);
    assertThat(store.packings.of(session).uses()).hasSizeGreaterThan(4);
    assertThat(Demand.of(store.packings.inWeekFrom(MONDAY), levels).unlisted()).isEmpty();
  }
}
