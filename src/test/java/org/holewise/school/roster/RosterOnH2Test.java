package org.holewise.school.roster;

import org.holewise.store.H2;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class RosterOnH2Test extends RosterContract {

  RosterOnH2Test() {
    super(new H2());
  }
}
