package org.holewise.school.room;

import org.holewise.store.Postgres;

class RoomOnPostgresIT extends RoomContract {

  RoomOnPostgresIT() {
    super(new Postgres());
  }
}
