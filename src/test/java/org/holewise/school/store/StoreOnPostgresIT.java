package org.holewise.school.store;

import org.holewise.store.Postgres;
import org.junit.jupiter.api.Nested;

class StoreOnPostgresIT {

  @Nested
  class TheLedger extends LedgerContract {
    TheLedger() {
      super(new Postgres());
    }
  }

  @Nested
  class TheDemand extends DemandContract {
    TheDemand() {
      super(new Postgres());
    }
  }
}
