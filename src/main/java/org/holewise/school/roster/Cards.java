package org.holewise.school.roster;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Sha256;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The codes on students' cards. A code is shown when its card is made; only its hash is kept. */
@Repository
public class Cards {

  /** Without those that are misread for one another, and without vowels that make words. */
  private static final String LETTERS = "CDFGHJKMNPQRTVWX34679";

  /** Fifteen of 21 letters are 65 bits: beyond trying, even for who has the hashes. */
  private static final int LENGTH = 15;

  private static final int GROUP = 5;

  private final JdbcClient db;
  private final SecureRandom random;
  private final Clock clock;

  Cards(JdbcClient db, SecureRandom random, Clock clock) {
    this.db = db;
    this.random = random;
    this.clock = clock;
  }

  /** Makes a student's card and returns its code, for the only time; the card before is dead. */
  @Transactional
  public String make(Person student) {
    String code =
        random
            .ints(LENGTH, 0, LETTERS.length())
            .mapToObj(i -> LETTERS.substring(i, i + 1))
            .collect(Collectors.joining());
    // One after the other, where a button is pressed twice.
    db.sql("select id from people where id = ? for update")
        .param(student.id())
        .query()
        .listOfRows();
    db.sql("delete from cards where person = ?").param(student.id()).update();
    db.sql("insert into cards (person, code_hash, made_at) values (?, ?, ?)")
        .params(student.id(), Sha256.hex(code), OffsetDateTime.now(clock))
        .update();
    return code.replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
  }

  /**
   * Whose card has this code, while they are in a class; capitals, spaces and hyphens do not
   * matter.
   */
  public Optional<Person> holder(String typed) {
    String code = typed.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
    return db.sql(
            """
            select p.id, p.name, p.role from people p join cards c on c.person = p.id
            where c.code_hash = ? and p.left_at is null
            and exists (select 1 from group_members m where m.person = p.id)
            """)
        .param(Sha256.hex(code))
        .query(People::person)
        .optional();
  }
}
