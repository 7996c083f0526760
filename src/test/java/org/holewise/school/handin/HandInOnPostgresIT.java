package org.holewise.school.handin;

import org.holewise.store.Postgres;
import org.junit.jupiter.api.Nested;

class HandInOnPostgresIT {

  @Nested
  class TheDrafts extends DraftsContract {
    TheDrafts() {
      super(new Postgres());
    }
  }

  @Nested
  class TheHandIns extends HandInContract {
    TheHandIns() {
      super(new Postgres());
    }
  }

  @Nested
  class TheCauses extends CausesContract {
    TheCauses() {
      super(new Postgres());
    }
  }
}
