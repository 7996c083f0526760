package org.holewise.school.system;

import org.holewise.store.H2;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class SchoolDataOnH2Test extends SchoolDataContract {
  SchoolDataOnH2Test() {
    super(new H2());
  }
}
