package org.holewise.school.account;

import org.holewise.store.Postgres;
import org.junit.jupiter.api.Nested;

class AccountOnPostgresIT {

  @Nested
  class ThePeople extends PeopleContract {
    ThePeople() {
      super(new Postgres());
    }
  }

  @Nested
  class TheTokens extends ApiTokensContract {
    TheTokens() {
      super(new Postgres());
    }
  }

  @Nested
  class TheTries extends TriesContract {
    TheTries() {
      super(new Postgres());
    }
  }

  @Nested
  class TheStaff extends StaffContract {
    TheStaff() {
      super(new Postgres());
    }
  }

  @Nested
  class TheNotes extends AuditContract {
    TheNotes() {
      super(new Postgres());
    }
  }
}
