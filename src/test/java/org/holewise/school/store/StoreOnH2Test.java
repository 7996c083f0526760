package org.holewise.school.store;

import org.holewise.store.H2;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class StoreOnH2Test {

  @Nested
  class TheLedger extends LedgerContract {
    TheLedger() {
      super(new H2());
    }
  }

  @Nested
  class TheDemand extends DemandContract {
    TheDemand() {
      super(new H2());
    }
  }
}
