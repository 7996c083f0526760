package org.holewise.school.room;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.holewise.engine.marking.Points;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Fault;
import org.holewise.school.session.LabSession;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All hand-ins of a session with the marks that count, in one statement. */
@Repository
class Attempts {

  private final JdbcClient db;

  Attempts(JdbcClient db) {
    this.db = db;
  }

  /** By bench and number; of each its latest mark and the teacher's last word. */
  List<Attempt> of(LabSession session) {
    return db.sql(
            """
            select h.id, h.bench, h.number, h.handed_at, m.wiring, m.readings, m.out_of, m.held,
              m.fault, m.fault_place, m.caution, o.id as own, o.wiring as own_wiring,
              o.readings as own_readings, o.reason
            from hand_ins h join benches b on b.id = h.bench
            left join marks m on m.hand_in = h.id
              and m.answers = (select max(x.answers) from marks x where x.hand_in = h.id)
            left join overrulings o on o.hand_in = h.id
              and o.id = (select max(y.id) from overrulings y where y.hand_in = h.id)
            where b.lab_session = ? order by b.number, h.number
            """)
        .param(session.id())
        .query((row, n) -> attempt(row))
        .list();
  }

  /** Of each student the hand-ins of the benches where the student was then. */
  Map<Person, List<Attempt>> byMember(LabSession session) {
    Map<Long, Attempt> known =
        of(session).stream().collect(Collectors.toMap(Attempt::id, attempt -> attempt));
    var handed = new HashMap<Person, List<Attempt>>();
    db.sql(
            """
            select p.id, p.name, p.role, m.hand_in from hand_in_members m
            join hand_ins h on h.id = m.hand_in join benches b on b.id = h.bench
            join people p on p.id = m.person where b.lab_session = ? order by h.id
            """)
        .param(session.id())
        .query(
            row -> {
              handed
                  .computeIfAbsent(People.person(row, 0), student -> new ArrayList<>())
                  .add(known.get(row.getLong("hand_in")));
            });
    return handed;
  }

  private static Attempt attempt(ResultSet row) throws SQLException {
    return new Attempt(
        row.getLong("id"),
        row.getLong("bench"),
        row.getInt("number"),
        Instants.of(row, "handed_at"),
        result(row));
  }

  private static Optional<Result> result(ResultSet row) throws SQLException {
    if (row.getString("fault") == null) {
      return Optional.empty();
    }
    var points =
        new Points(
            row.getInt("wiring"),
            row.getInt("readings"),
            row.getInt("out_of"),
            row.getBoolean("held"));
    var fault = new Fault(row.getString("fault"), row.getString("fault_place"));
    return Optional.of(
        new Result(
            points,
            Optional.of(fault).filter(found -> !found.kind().isEmpty()),
            row.getString("caution"),
            own(row)));
  }

  private static Optional<Result.Own> own(ResultSet row) throws SQLException {
    return row.getString("reason") == null
        ? Optional.empty()
        : Optional.of(
            new Result.Own(
                row.getInt("own_wiring"), row.getInt("own_readings"), row.getString("reason")));
  }
}
