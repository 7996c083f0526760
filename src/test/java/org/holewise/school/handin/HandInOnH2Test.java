package org.holewise.school.handin;

import org.holewise.store.H2;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class HandInOnH2Test {

  @Nested
  class TheDrafts extends DraftsContract {
    TheDrafts() {
      super(new H2());
    }
  }

  @Nested
  class TheHandIns extends HandInContract {
    TheHandIns() {
      super(new H2());
    }
  }

  @Nested
  class TheCauses extends CausesContract {
    TheCauses() {
      super(new H2());
    }
  }
}
