package org.holewise.school.handin;

import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What waits to be marked. A job is written with its hand-in or answer, and goes with the mark. */
@Repository
class MarkingJobs {

  /** A job that failed so often waits for somebody to look at the log. */
  static final int MOST_FAILURES = 5;

  private static final RowMapper<Job> JOB =
      (row, n) -> new Job(row.getLong("id"), row.getLong("hand_in"), row.getInt("answers"));

  private static final String SELECT = "select id, hand_in, answers from marking_jobs";

  private final JdbcClient db;

  MarkingJobs(JdbcClient db) {
    this.db = db;
  }

  /**
   * One marking to do.
   *
   * @param answers how many answers of the hand-in are marked along
   */
  record Job(long id, long handIn, int answers) {}

  void add(long handIn, int answers) {
    db.sql("insert into marking_jobs (hand_in, answers) values (?, ?)")
        .params(handIn, answers)
        .update();
  }

  /** The ids of waiting jobs, the oldest first. */
  List<Long> waiting(int most) {
    return db.sql(
            "select id from marking_jobs where failures < ? order by id fetch first ? rows only")
        .params(MOST_FAILURES, most)
        .query(Long.class)
        .list();
  }

  List<Long> waitingFor(long handIn) {
    return db.sql("select id from marking_jobs where hand_in = ? and failures < ? order by id")
        .params(handIn, MOST_FAILURES)
        .query(Long.class)
        .list();
  }

  /** Takes a job for this transaction; empty where it is done or another copy has it. */
  Optional<Job> take(long id) {
    return db.sql(SELECT + " where id = ? for update skip locked").param(id).query(JOB).optional();
  }

  void done(Job job) {
    db.sql("delete from marking_jobs where id = ?").param(job.id()).update();
  }

  void failed(long id) {
    db.sql("update marking_jobs set failures = failures + 1 where id = ?").param(id).update();
  }
}
