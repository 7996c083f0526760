package org.holewise.school.account;

import org.holewise.store.H2;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class AccountOnH2Test {

  @Nested
  class ThePeople extends PeopleContract {
    ThePeople() {
      super(new H2());
    }
  }

  @Nested
  class TheTokens extends ApiTokensContract {
    TheTokens() {
      super(new H2());
    }
  }

  @Nested
  class TheTries extends TriesContract {
    TheTries() {
      super(new H2());
    }
  }

  @Nested
  class TheStaff extends StaffContract {
    TheStaff() {
      super(new H2());
    }
  }

  @Nested
  class TheNotes extends AuditContract {
    TheNotes() {
      super(new H2());
    }
  }
}
