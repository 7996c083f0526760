package org.holewise.school.handin;

import java.util.concurrent.Semaphore;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.school.handin.MarkingJobs.Job;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Marks what was handed in, after it was committed: at once where a processor is free, else, or
 * after a crash, when the waiting jobs are looked at. Each job is one transaction that takes it,
 * adds the mark and removes it; a job that another copy of the application has is skipped.
 */
@Component
public class MarkingQueue {

  private static final Logger log = LoggerFactory.getLogger(MarkingQueue.class);

  private static final int AT_A_TIME = 50;

  private final MarkingJobs jobs;
  private final Marks marks;
  private final Answers answers;
  private final SchoolPriors priors;
  private final Repairs repairs;
  private final LabSessions sessions;
  private final JdbcClient db;
  private final TransactionTemplate transaction;
  private final Semaphore processors = new Semaphore(Runtime.getRuntime().availableProcessors());

  MarkingQueue(
      MarkingJobs jobs,
      Marks marks,
      Answers answers,
      SchoolPriors priors,
      Repairs repairs,
      LabSessions sessions,
      JdbcClient db,
      TransactionTemplate transaction) {
    this.jobs = jobs;
    this.marks = marks;
    this.answers = answers;
    this.priors = priors;
    this.repairs = repairs;
    this.sessions = sessions;
    this.db = db;
    this.transaction = transaction;
  }

  /** Marks a hand-in and its answers now if a processor is free. */
  public void now(HandIn handIn) {
    if (processors.tryAcquire()) {
      try {
        jobs.waitingFor(handIn.id()).forEach(this::tryJob);
      } finally {
        processors.release();
      }
    }
  }

  /** Marks what waits. */
  @Scheduled(fixedDelayString = "${holewise.marking.every:1000}")
  public void waiting() {
    jobs.waiting(AT_A_TIME).forEach(this::tryJob);
  }

  // A job that cannot be marked must not hold up the others; what was handed in stays.
  private void tryJob(long id) {
    try {
      transaction.executeWithoutResult(status -> jobs.take(id).ifPresent(this::mark));
    } catch (RuntimeException failure) {
      log.error("marking job {} failed", id, failure);
      jobs.failed(id);
    }
  }

  private void mark(Job job) {
    LabSession session = session(job);
    BenchRecord record = BuildLines.read(lines(job), session.exercise()).record();
    marks.add(job, Marked.of(session.exercise(), record, priors.now()));
    jobs.done(job);
    repairs.look(job.handIn(), session.exercise());
    sessions.changed(session.id());
  }

  private String lines(Job job) {
    var lines =
        new StringBuilder(
            db.sql("select document from hand_ins where id = ?")
                .param(job.handIn())
                .query(String.class)
                .single());
    answers.of(job.handIn()).stream()
        .limit(job.answers())
        .forEach(answer -> lines.append("extra ").append(answer.line()).append('\n'));
    return lines.toString();
  }

  private LabSession session(Job job) {
    long id =
        db.sql(
                """
                select b.lab_session from benches b join hand_ins h on h.bench = b.id
                where h.id = ?
                """)
            .param(job.handIn())
            .query(Long.class)
            .single();
    return sessions.find(id).orElseThrow();
  }
}
