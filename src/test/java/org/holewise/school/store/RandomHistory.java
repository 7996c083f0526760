package org.holewise.school.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.holewise.school.session.LabSession;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Movements at random, some impossible. A plain table of places beside the ledger says what each
 * should come to, and which must be refused.
 */
final class RandomHistory {

  private static final int MOST = 12;

  private final StageStore store;
  private final List<LabSession> sessions;
  private final List<Item> items;
  private final Map<Long, Map<Place, Integer>> places = new HashMap<>();
  private final Map<List<Long>, Integer> out = new HashMap<>();
  private int kept;
  private int refused;

  RandomHistory(StageStore store, List<LabSession> sessions) {
    this.store = store;
    this.sessions = sessions;
    items = List.of(store.item("Red lamp", "led red"), store.item("Link wire", ""));
    for (Item item : items) {
      places.put(item.id(), new EnumMap<>(Place.class));
    }
  }

  void runs(int steps, long seed) {
    var random = new Random(seed);
    for (int step = 0; step < steps; step++) {
      Item item = items.get(random.nextInt(items.size()));
      var acts = Act.values();
      moves(item, acts[random.nextInt(acts.length)], 1 + random.nextInt(MOST), random);
    }
    assertThat(kept).as("kept").isGreaterThan(steps / 4);
    assertThat(refused).as("refused").isGreaterThan(steps / 20);
    items.forEach(this::comesToTheSame);
  }

  private void moves(Item item, Act act, int quantity, Random random) {
    boolean forClass = act.from() == Place.CLASS || act.to() == Place.CLASS;
    var session =
        forClass
            ? Optional.of(sessions.get(random.nextInt(sessions.size())).id())
            : Optional.<Long>empty();
    boolean possible =
        (act.from() != Place.STORE || at(item, Place.STORE) >= quantity)
            && (act.from() != Place.CLASS || outFor(item, session) >= quantity);
    var outcome = store.write(session, Slip.Line.of(item.id(), act, quantity));
    assertThat(outcome instanceof Outcome.Kept).as("%s %s", act, quantity).isEqualTo(possible);
    if (possible) {
      kept++;
      takes(item, act, quantity, session);
    } else {
      refused++;
      assertThat(outcome).isInstanceOf(Outcome.TooFew.class);
    }
  }

  private void takes(Item item, Act act, int quantity, Optional<Long> session) {
    places.get(item.id()).merge(act.from(), -quantity, Integer::sum);
    places.get(item.id()).merge(act.to(), quantity, Integer::sum);
    session.ifPresent(
        id ->
            out.merge(
                List.of(item.id(), id),
                act.to() == Place.CLASS ? quantity : -quantity,
                Integer::sum));
  }

  private void comesToTheSame(Item item) {
    int sum = 0;
    for (Place place : Place.values()) {
      int there = summed(item, place);
      assertThat(there).as("%s in %s", item.label(), place).isEqualTo(at(item, place));
      sum += there;
    }
    assertThat(sum).isZero();
    assertThat(store.level(item).inStore()).isEqualTo(at(item, Place.STORE));
    assertThat(store.rows(item)).allMatch(row -> row.inStore() >= 0);
    assertThat(store.rows(item).get(0).inStore()).isEqualTo(at(item, Place.STORE));
    for (Use use : store.movements.of(sessions.stream().map(LabSession::id).toList())) {
      assertThat(use.out()).isEqualTo(out.getOrDefault(List.of(use.item(), use.session()), 0));
    }
  }

  private int summed(Item item, Place place) {
    return store
        .office
        .part(JdbcClient.class)
        .sql(
            """
            select coalesce(sum(case when to_place = :place then quantity else 0 end)
              - sum(case when from_place = :place then quantity else 0 end), 0)
            from stock_movements where item = :item
            """)
        .param("place", place.name())
        .param("item", item.id())
        .query(Integer.class)
        .single();
  }

  private int at(Item item, Place place) {
    return places.get(item.id()).getOrDefault(place, 0);
  }

  private int outFor(Item item, Optional<Long> session) {
    return out.getOrDefault(List.of(item.id(), session.orElseThrow()), 0);
  }
}
