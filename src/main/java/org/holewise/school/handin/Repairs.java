package org.holewise.school.handin;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.holewise.document.lines.BuildLines;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.sheet.KeptMark;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Looks at a bench's hand-ins, each with the one after it: what does the repair between them prove?
 * A sound hand-in after one whose cause is known is known to be sound.
 */
@Repository
class Repairs {

  private final JdbcClient db;
  private final Known known;

  Repairs(JdbcClient db, Known known) {
    this.db = db;
    this.known = known;
  }

  /** A hand-in with the latest of its marks. */
  private record Kept(
      long handIn, int number, String lines, String document, Fault pointed, boolean sound) {

    BenchRecord record(Exercise exercise) {
      return BuildLines.read(lines, exercise).record();
    }

    KeptMark mark() {
      return KeptMark.read(document);
    }
  }

  /** Keeps what is known of a hand-in and its neighbours now that it has a mark or a cause. */
  void look(long handIn, Exercise exercise) {
    List<Kept> row = around(handIn);
    for (int i = 1; i < row.size(); i++) {
      Kept before = row.get(i - 1);
      Kept after = row.get(i);
      if (after.number() == before.number() + 1 && !before.sound() && after.sound()) {
        look(before, after, exercise);
      }
    }
  }

  private void look(Kept before, Kept after, Exercise exercise) {
    if (known.of(before.handIn()).isEmpty()) {
      proof(before, after, exercise).ifPresent(fault -> keep(before, Cause.of(fault)));
    }
    known
        .of(before.handIn())
        .filter(cause -> !cause.kind().equals(Taught.NONE))
        .ifPresent(cause -> keep(after, Cause.nothing()));
  }

  // Looked at again under the lock: two may look at once.
  private void keep(Kept kept, Cause cause) {
    known.lock();
    if (known.of(kept.handIn()).isEmpty()) {
      var foretold = Foretold.of(kept.mark(), cause);
      known.append(kept.handIn(), cause, Optional.empty(), foretold);
    }
  }

  private static Optional<Fault> proof(Kept before, Kept after, Exercise exercise) {
    return RepairProof.of(
        exercise, before.record(exercise), before.mark(), before.pointed(), after.record(exercise));
  }

  private List<Kept> around(long handIn) {
    return db.sql(
            """
            select h.id, h.number, h.document, m.document as mark, m.fault, m.fault_place,
              m.total, m.out_of
            from hand_ins h
            join hand_ins me on me.bench = h.bench and h.number between me.number - 1
              and me.number + 1
            join marks m on m.hand_in = h.id
              and m.answers = (select max(x.answers) from marks x where x.hand_in = h.id)
            where me.id = ? order by h.number
            """)
        .param(handIn)
        .query(Repairs::kept)
        .list();
  }

  private static Kept kept(ResultSet row, int number) throws SQLException {
    String document = row.getString("mark");
    var pointed = new Fault(row.getString("fault"), row.getString("fault_place"));
    boolean sound =
        pointed.kind().isEmpty()
            && row.getInt("total") == row.getInt("out_of")
            && !document.contains("\"" + RepairProof.MARKED_OTHERWISE + "\"");
    return new Kept(
        row.getLong("id"),
        row.getInt("number"),
        row.getString("document"),
        document,
        pointed,
        sound);
  }
}
