package org.holewise.school.system;

import org.holewise.store.H2;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class SessionAttributesOnH2Test extends SessionAttributesContract {

  SessionAttributesOnH2Test() {
    super(new H2());
  }
}
