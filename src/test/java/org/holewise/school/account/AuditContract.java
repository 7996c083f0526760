package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.NoOpPasswordEncoder;

/** What holds of the notes on every kind of database. */
abstract class AuditContract {

  private final HandClock clock = new HandClock();
  private final Audit audit;
  private final PeopleNames names;
  private final People people;
  private final Person ada;

  AuditContract(Store store) {
    var db = store.migrated();
    people = new People(db, NoOpPasswordEncoder.getInstance(), clock);
    audit = new Audit(db, clock);
    names = new PeopleNames(db);
    ada = people.addWithoutPassword("Ada", Role.ADMINISTRATOR);
  }

  @Test
  void tellWhoDidWhatWhenToWhat() {
    audit.note(ada, "class.added", "class", 7);
    var event = audit.before(Long.MAX_VALUE, 1).get(0);
    assertThat(event)
        .isEqualTo(
            new AuditEvent(
                event.id(), clock.instant(), ada.id(), "Ada", "class.added", "class", 7));
  }

  @Test
  void areReadInPagesTheLatestFirst() {
    for (int i = 1; i <= 5; i++) {
      audit.note(ada, "class.added", "class", i);
    }
    var latest = audit.before(Long.MAX_VALUE, 2);
    assertThat(latest).extracting(AuditEvent::subjectId).containsExactly(5L, 4L);
    assertThat(audit.before(latest.get(1).id(), 2))
        .extracting(AuditEvent::subjectId)
        .containsExactly(3L, 2L);
    assertThat(audit.before(1, 2)).isEmpty();
  }

  @Test
  void findPresentNamesOfThoseThatAreThere() {
    var wren = people.addStudent("Wren");
    people.renameStudent(wren.id(), "Sorrel");
    assertThat(names.of(Set.of(wren.id(), ada.id(), -1L)))
        .isEqualTo(Map.of(wren.id(), "Sorrel", ada.id(), "Ada"));
  }
}
