package org.holewise.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.holewise.crash.Kept.Entry;
import org.holewise.crash.Ledger.Key;
import org.holewise.crash.Ledger.Place;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The ledger notices what is lost. */
@Tag("fast")
class LedgerTest {

  private static final Place PLACE = new Place(7, "reading:supply");
  private static final Key KEY = new Key(7, "k");

  private final Ledger ledger = new Ledger();

  @BeforeEach
  void toldOfOneEach() {
    ledger.sent(PLACE, "5.00 V");
    ledger.acknowledged(PLACE, "5.00 V", 3);
    ledger.sent(KEY);
    ledger.acknowledged(KEY);
  }

  @Test
  void isContentWithWhatWasAcknowledged() {
    assertThat(wrong(new Entry(3, "5.00 V"), 1)).isEmpty();
  }

  @Test
  void isContentWithWhatWasSentSince() {
    ledger.sent(PLACE, "5.01 V");
    assertThat(wrong(new Entry(3, "5.00 V"), 1)).isEmpty();
    assertThat(wrong(new Entry(4, "5.01 V"), 1)).isEmpty();
    ledger.sent(new Key(7, "open"));
    assertThat(wrong(new Entry(3, "5.00 V"), 1)).isEmpty();
    assertThat(ledger.open()).isEqualTo(2);
  }

  @Test
  void missesASaveThatIsGone() {
    assertThat(wrong(new Entry(2, "5.00 V"), 1)).hasSize(1);
    assertThat(wrong(new Entry(3, "4.99 V"), 1)).hasSize(1);
    assertThat(wrong(new Entry(4, "5.01 V"), 1)).hasSize(1);
    assertThat(ledger.wrongWith(kept(Map.of(), Map.of(KEY, 1)))).hasSize(1);
  }

  @Test
  void missesAHandInThatIsGoneOrThereTwice() {
    assertThat(wrong(new Entry(3, "5.00 V"), 0)).hasSize(1);
    assertThat(wrong(new Entry(3, "5.00 V"), 2)).hasSize(1);
  }

  @Test
  void noticesAHandInThatNobodySent() {
    var handIns = Map.of(KEY, 1, new Key(7, "x"), 1);
    assertThat(ledger.wrongWith(kept(Map.of(PLACE, new Entry(3, "5.00 V")), handIns))).hasSize(1);
  }

  private List<String> wrong(Entry entry, int handIns) {
    return ledger.wrongWith(kept(Map.of(PLACE, entry), Map.of(KEY, handIns)));
  }

  private static Kept kept(Map<Place, Entry> drafts, Map<Key, Integer> handIns) {
    return new Kept(drafts, handIns, 0, List.of());
  }
}
