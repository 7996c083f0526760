package org.holewise.crash;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.holewise.crash.Ledger.Key;
import org.holewise.crash.Ledger.Place;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What the data hold of drafts and hand-ins.
 *
 * @param handIns how many there are of each key
 * @param unmarked hand-ins that wait for their mark
 * @param disorder what no data should show, a sentence each
 */
record Kept(
    Map<Place, Entry> drafts, Map<Key, Integer> handIns, int unmarked, List<String> disorder) {

  record Entry(long revision, String text) {}

  static Kept in(JdbcClient db) {
    return new Kept(drafts(db), handIns(db), unmarked(db), disorder(db));
  }

  private static Map<Place, Entry> drafts(JdbcClient db) {
    var drafts = new HashMap<Place, Entry>();
    db.sql("select bench, name, revision, text from draft_entries")
        .query(
            row -> {
              drafts.put(
                  new Place(row.getLong("bench"), row.getString("name")),
                  new Entry(row.getLong("revision"), row.getString("text")));
            });
    return drafts;
  }

  private static Map<Key, Integer> handIns(JdbcClient db) {
    var handIns = new HashMap<Key, Integer>();
    db.sql("select bench, request_key from hand_ins")
        .query(
            row -> {
              var key = new Key(row.getLong("bench"), row.getString("request_key"));
              handIns.merge(key, 1, Integer::sum);
            });
    return handIns;
  }

  private static int unmarked(JdbcClient db) {
    return db.sql("select count(*) from marking_jobs").query(Integer.class).single();
  }

  private static List<String> disorder(JdbcClient db) {
    return db.sql(
            """
            select concat('hand-in ', h.id, ' has neither one mark nor one job') from hand_ins h
            where (select count(*) from marks m where m.hand_in = h.id)
              + (select count(*) from marking_jobs j where j.hand_in = h.id) <> 1
            union all
            select concat('hand-in ', h.id, ' is nobody''s') from hand_ins h
            where not exists (select 1 from hand_in_members m where m.hand_in = h.id)
            union all
            select concat('the hand-ins of bench ', h.bench, ' are not numbered from 1')
            from hand_ins h group by h.bench
            having min(h.number) <> 1 or max(h.number) <> count(*)
            """)
        .query(String.class)
        .list();
  }
}
