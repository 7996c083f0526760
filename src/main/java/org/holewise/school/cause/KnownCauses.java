package org.holewise.school.cause;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The causes that count, one a hand-in. Sound hand-ins that merely end a repair are left out: they
 * were chosen for a mark that found nothing, so that they cannot tell whether marks are right.
 */
@Repository
class KnownCauses {

  private final JdbcClient db;

  KnownCauses(JdbcClient db) {
    this.db = db;
  }

  /** In the order in which they became known. */
  List<KnownCause> all() {
    return db.sql(
            """
            select c.kind, c.source, c.pointed, c.said, c.was_so from causes c
            where not (c.source = 'REPAIR' and c.kind = 'none') and not exists (
              select 1 from causes x
              where x.hand_in = c.hand_in and x.source = 'TEACHER'
                and (c.source = 'REPAIR' or x.number > c.number))
            order by c.number
            """)
        .query(KnownCauses::cause)
        .list();
  }

  private static KnownCause cause(ResultSet row, int number) throws SQLException {
    return new KnownCause(
        row.getString("kind"),
        row.getString("source").equals("REPAIR"),
        Optional.ofNullable(row.getObject("pointed", Integer.class)),
        Optional.ofNullable(row.getObject("said", Double.class)),
        Optional.ofNullable(row.getObject("was_so", Boolean.class)));
  }
}
