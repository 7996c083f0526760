package org.holewise.school.handin;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The tables that a school's known causes make, one after each cause. Causes are only appended, so
 * that a table's name gives the same table for ever with one version of the engine. Nothing is kept
 * in memory.
 */
@Repository
public class SchoolPriors {

  private static final String START = Priors.start().name();

  private static final Pattern LEARNT = Pattern.compile("school-([1-9][0-9]{0,17})");

  private final JdbcClient db;

  SchoolPriors(JdbcClient db) {
    this.db = db;
  }

  private record Count(String kind, boolean ofLink, int causes) {}

  /** The table of all causes known by now. */
  public Priors now() {
    return after(db.sql("select causes from cause_count").query(Long.class).single());
  }

  /**
   * The table of that name.
   *
   * @throws IllegalArgumentException where no table has it, as for more causes than are known
   */
  public Priors named(String name) {
    var learnt = LEARNT.matcher(name);
    long causes = learnt.matches() ? Long.parseLong(learnt.group(1)) : 0;
    long known = db.sql("select causes from cause_count").query(Long.class).single();
    if (causes > known || (!learnt.matches() && !name.equals(START))) {
      throw new IllegalArgumentException("no table " + name);
    }
    return after(causes);
  }

  private Priors after(long causes) {
    if (causes == 0) {
      return Priors.start();
    }
    Map<Family, Integer> counts = new EnumMap<>(Family.class);
    for (Count count : counts(causes)) {
      Taught.family(count.kind(), count.ofLink())
          .ifPresent(family -> counts.merge(family, count.causes(), Integer::sum));
    }
    int sound = counts.getOrDefault(Family.NONE, 0);
    counts.remove(Family.NONE);
    return Priors.learnt("school-" + causes, counts, sound);
  }

  // Of each hand-in the last word: of teachers the latest, and theirs above a repair's.
  private List<Count> counts(long causes) {
    return db.sql(
            """
            select kind, of_link, count(*) as causes from (
              select c.kind, case when c.place like 'link %' then 1 else 0 end as of_link
              from causes c where c.number <= ? and not exists (
                select 1 from causes x
                where x.hand_in = c.hand_in and x.number <= ? and x.source = 'TEACHER'
                  and (c.source = 'REPAIR' or x.number > c.number))) as counted
            group by kind, of_link
            """)
        .params(causes, causes)
        .query(
            (row, n) ->
                new Count(row.getString("kind"), row.getInt("of_link") == 1, row.getInt("causes")))
        .list();
  }
}
