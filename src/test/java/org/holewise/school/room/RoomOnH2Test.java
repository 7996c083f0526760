package org.holewise.school.room;

import org.holewise.store.H2;
import org.junit.jupiter.api.Tag;

@Tag("fast")
class RoomOnH2Test extends RoomContract {

  RoomOnH2Test() {
    super(new H2());
  }
}
