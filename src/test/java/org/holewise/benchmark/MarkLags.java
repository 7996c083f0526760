package org.holewise.benchmark;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.holewise.benchmark.OpenLoop.Times;
import org.holewise.running.Settings;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * How long hand-ins waited for their marks.
 *
 * @param afterAll from the last hand-in to the last mark
 */
record MarkLags(Times lags, Duration afterAll, int unmarked) {

  private record Row(Instant handedIn, Instant marked) {}

  /** Reads them from the data, which nobody has open. */
  static MarkLags in(Settings settings) {
    var db = settings.data();
    var rows =
        db.sql(
                """
                select h.handed_at, m.made_at from hand_ins h join marks m on m.hand_in = h.id
                """)
            .query((row, n) -> new Row(instant(row, 1), instant(row, 2)))
            .list();
    double[] millis = rows.stream().mapToDouble(MarkLags::millis).sorted().toArray();
    var last = rows.stream().map(Row::handedIn).max(Instant::compareTo).orElseThrow();
    var end = rows.stream().map(Row::marked).max(Instant::compareTo).orElseThrow();
    return new MarkLags(new Times(millis, List.of()), Duration.between(last, end), unmarked(db));
  }

  private static Instant instant(ResultSet row, int column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  private static int unmarked(JdbcClient db) {
    return db.sql("select count(*) from marking_jobs").query(Integer.class).single();
  }

  private static double millis(Row row) {
    return Duration.between(row.handedIn(), row.marked()).toNanos() / 1e6;
  }

  @Override
  public String toString() {
    return "marks after their hand-ins: "
        + lags
        + "; the last %d ms after the last hand-in; %d unmarked"
            .formatted(afterAll.toMillis(), unmarked);
  }
}
