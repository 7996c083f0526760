package org.holewise.school.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Person;
import org.holewise.school.store.Outcome.Shortage;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Moves things. Every movement takes a quantity from one place to another, so that an item's sum
 * over all places is always zero. Neither the store nor a class can give what it has not: whoever
 * moves an item first locks its row, in the order of ids.
 */
@Repository
class Ledger {

  private static final String SUBJECT = "item";

  private final Items items;
  private final Movements movements;
  private final Audit audit;
  private final TransactionTemplate work;

  Ledger(Items items, Movements movements, Audit audit, TransactionTemplate work) {
    this.items = items;
    this.movements = movements;
    this.audit = audit;
    this.work = work;
  }

  /** Moves all that a slip says, or nothing. */
  Outcome write(Person by, Slip slip) {
    return inTurn(slip.items(), () -> checked(by, slip, Optional.empty()));
  }

  /**
   * Has the store hold what somebody counted.
   *
   * @param shown how many the page said there were, when it asked for the count
   */
  Outcome count(Person by, String key, long item, int shown, int there, String note) {
    return inTurn(List.of(item), () -> counted(by, key, item, shown, there, note));
  }

  /** Takes a movement back, once. */
  Outcome putRight(Person by, Item item, Movement wrong, String note) {
    var line = new Slip.Line(item.id(), wrong.from(), wrong.to(), wrong.quantity()).back();
    var session = wrong.session().map(Movement.ForSession::id);
    var slip = new Slip("counter-" + wrong.id(), session, note, List.of(line));
    return inTurn(slip.items(), () -> checked(by, slip, Optional.of(wrong.id())));
  }

  // A duplicate is caught out here, where the transaction that met it has ended.
  private Outcome inTurn(List<Long> moved, Supplier<Outcome> act) {
    try {
      return Objects.requireNonNull(
          work.execute(
              status -> {
                moved.forEach(items::lock);
                return act.get();
              }));
    } catch (DuplicateKeyException twice) {
      return new Outcome.Already();
    }
  }

  private Outcome checked(Person by, Slip slip, Optional<Long> counters) {
    if (movements.have(slip.key())) {
      return new Outcome.Already();
    }
    var shortages = shortages(slip);
    if (!shortages.isEmpty()) {
      return new Outcome.TooFew(shortages);
    }
    for (Slip.Line line : slip.lines()) {
      movements.add(by, slip, line, counters.orElse(null));
      audit.note(by, act(line, counters.isPresent()), SUBJECT, line.item());
    }
    return new Outcome.Kept();
  }

  private Outcome counted(Person by, String key, long item, int shown, int there, String note) {
    if (movements.have(key)) {
      return new Outcome.Already();
    }
    int inStore = items.find(item).orElseThrow().inStore();
    if (inStore != shown) {
      return new Outcome.Moved(inStore);
    }
    if (there == inStore) {
      return new Outcome.Agrees();
    }
    var act = there > inStore ? Act.COUNTED_MORE : Act.COUNTED_LESS;
    var line = Slip.Line.of(item, act, Math.abs(there - inStore));
    return checked(by, new Slip(key, Optional.empty(), note, List.of(line)), Optional.empty());
  }

  private List<Shortage> shortages(Slip slip) {
    var shortages = new ArrayList<Shortage>();
    for (long id : slip.items()) {
      Level level = items.find(id).orElseThrow();
      if (slip.takes(id, Place.STORE) > level.inStore()) {
        shortages.add(new Shortage(level.item(), Place.STORE, level.inStore()));
      }
      int out = slip.session().map(session -> out(session, id)).orElse(level.withClasses());
      if (slip.takes(id, Place.CLASS) > out) {
        shortages.add(new Shortage(level.item(), Place.CLASS, out));
      }
    }
    return shortages;
  }

  private int out(long session, long item) {
    return movements.of(List.of(session)).stream()
        .filter(use -> use.item() == item)
        .mapToInt(Use::out)
        .sum();
  }

  private static String act(Slip.Line line, boolean counter) {
    if (counter) {
      return "stock.put-right";
    }
    String act = Act.of(line.from(), line.to()).orElseThrow().name();
    return "stock." + act.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
