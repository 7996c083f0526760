package org.holewise.school.handin;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.marking.Mark;
import org.holewise.engine.marking.Points;
import org.holewise.school.account.Instants;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Marks of hand-ins. They are appended, one after each answer, and never changed. */
@Repository
public class Marks {

  private static final String COLUMNS =
      "answers, engine, priors, document, wiring, readings, out_of, held, made_at";

  /** Cautions about the exercise: they tell nothing of one bench. */
  private static final List<String> OF_ANY_BUILD = List.of("short-circuit-current", "high-voltage");

  private final JdbcClient db;
  private final Clock clock;

  Marks(JdbcClient db, Clock clock) {
    this.db = db;
    this.clock = clock;
  }

  /** The mark that takes in the most answers; empty while the hand-in waits to be marked. */
  public Optional<MarkRow> latest(HandIn handIn) {
    return db.sql(
            "select "
                + COLUMNS
                + " from marks where hand_in = ? order by answers desc fetch first 1 row only")
        .param(handIn.id())
        .query(Marks::mark)
        .optional();
  }

  /** The marks earned, without their document. */
  public Optional<Points> points(HandIn handIn) {
    return db.sql(
            """
            select wiring, readings, out_of, held from marks where hand_in = ?
            order by answers desc fetch first 1 row only
            """)
        .param(handIn.id())
        .query(Marks::points)
        .optional();
  }

  void add(MarkingJobs.Job job, Marked marked) {
    Points points = marked.mark().marks();
    Fault fault = Fault.of(marked.mark()).orElse(new Fault("", ""));
    db.sql(
            """
            insert into marks (hand_in, answers, engine, priors, document, wiring, readings, total,
              out_of, held, fault, fault_place, caution, made_at)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """)
        .params(job.handIn(), job.answers(), marked.mark().engine(), marked.mark().priors())
        .params(new String(marked.document(), StandardCharsets.UTF_8))
        .params(points.wiring(), points.readings(), points.total(), points.of(), points.held())
        .params(fault.kind(), fault.place(), caution(marked.mark()))
        .params(OffsetDateTime.now(clock))
        .update();
  }

  private static String caution(Mark mark) {
    return mark.cautions().stream()
        .map(Caution::kind)
        .filter(kind -> !OF_ANY_BUILD.contains(kind))
        .findFirst()
        .orElse("");
  }

  private static MarkRow mark(ResultSet row, int number) throws SQLException {
    return new MarkRow(
        row.getInt("answers"),
        row.getString("engine"),
        row.getString("priors"),
        row.getString("document"),
        points(row, number),
        Instants.of(row, "made_at"));
  }

  private static Points points(ResultSet row, int number) throws SQLException {
    return new Points(
        row.getInt("wiring"), row.getInt("readings"), row.getInt("out_of"), row.getBoolean("held"));
  }
}
