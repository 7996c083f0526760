package org.holewise.route;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What must hold of the data whatever was sent, beyond what the database itself holds them to. */
final class Order {

  private Order() {}

  /** What does not hold, a sentence each. */
  static List<String> wrongWith(JdbcClient db) {
    return db.sql(
            """
            select concat('hand-in ', h.id, ' is nobody''s') from hand_ins h
            where not exists (select 1 from hand_in_members m where m.hand_in = h.id)
            union all
            select concat('the hand-ins of bench ', h.bench, ' are not numbered from 1')
            from hand_ins h group by h.bench
            having min(h.number) <> 1 or max(h.number) <> count(*)
            union all
            select concat('hand-in ', h.id, ' has not one mark or job for itself and each answer')
            from hand_ins h
            where (select count(*) from marks m where m.hand_in = h.id)
                + (select count(*) from marking_jobs j where j.hand_in = h.id)
              <> 1 + (select count(*) from answers a where a.hand_in = h.id)
            union all
            select concat('marking job ', j.id, ' failed') from marking_jobs j where j.failures > 0
            union all
            select concat('person ', m.person, ' sits in another session') from bench_members m
            join benches b on b.id = m.bench where b.lab_session <> m.lab_session
            union all
            select concat('person ', m.person, ' sits on a bench and is no student')
            from bench_members m join people p on p.id = m.person where p.role <> 'STUDENT'
            union all
            select concat('person ', c.person, ' has a card and is no student') from cards c
            join people p on p.id = c.person where p.role <> 'STUDENT'
            union all
            select concat('session ', s.id, ' was closed before it was opened') from lab_sessions s
            where s.closed_at is not null and s.opened_at is null
            union all
            select concat('the kept texts of bench ', e.bench, ' have an empty name')
            from draft_entries e where e.name = ''
            """)
        .query(String.class)
        .list();
  }
}
