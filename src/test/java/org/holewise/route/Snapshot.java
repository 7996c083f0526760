package org.holewise.route;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * All rows of all tables, to tell whether any was changed. Browsers' sessions are left out: each
 * visit renews the time of its session.
 */
record Snapshot(Map<String, List<String>> rows) {

  static Snapshot of(JdbcClient db) {
    var rows = new TreeMap<String, List<String>>();
    for (String table : tables(db)) {
      rows.put(
          table,
          db.sql("select * from \"" + table + "\"").query().listOfRows().stream()
              .map(Object::toString)
              .sorted()
              .toList());
    }
    return new Snapshot(rows);
  }

  private static List<String> tables(JdbcClient db) {
    return db.sql(
            """
            select table_name from information_schema.tables
            where table_schema = current_schema and lower(table_name) not like 'spring_session%'
            """)
        .query(String.class)
        .list();
  }
}
