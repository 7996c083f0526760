package org.holewise.school.system;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.stream.Collectors;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.account.Sha256;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The first start of a school: whoever can read the log proves it with a code, and becomes the
 * first administrator. Only a hash of the code is kept, and it is gone once used.
 */
@Component
class SetUp {

  /** Without those that are misread for one another. */
  private static final String LETTERS = "ABCDEFGHJKMNPQRSTVWXYZ23456789";

  /** Twenty of thirty letters are 98 bits. */
  private static final int LENGTH = 20;

  private static final int GROUP = 5;

  private final JdbcClient db;
  private final People people;
  private final SecureRandom random;
  private final Clock clock;

  SetUp(JdbcClient db, People people, SecureRandom random, Clock clock) {
    this.db = db;
    this.people = people;
    this.random = random;
    this.clock = clock;
  }

  /** Whether this school still waits for its first administrator. */
  boolean isOpen() {
    return db.sql("select count(*) from installation where kind = 'SCHOOL' and set_up_at is null")
            .query(Integer.class)
            .single()
        > 0;
  }

  /** A new code; the one before it is dead. */
  String newCode() {
    String code =
        random
            .ints(LENGTH, 0, LETTERS.length())
            .mapToObj(i -> LETTERS.substring(i, i + 1))
            .collect(Collectors.joining());
    db.sql("update installation set set_up_code_hash = ? where set_up_at is null")
        .param(Sha256.hex(code))
        .update();
    return code.replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
  }

  /** Adds the first administrator; false where the code is not, or no longer, the one. */
  @Transactional
  boolean complete(String code, String name, String password) {
    String hash = Sha256.hex(plain(code));
    if (!isTheCode(hash) || !used(hash)) {
      return false;
    }
    people.add(name, Role.ADMINISTRATOR, password);
    return true;
  }

  private boolean isTheCode(String hash) {
    var kept =
        db.sql("select set_up_code_hash from installation where set_up_code_hash is not null")
            .query(String.class)
            .optional();
    return kept.isPresent()
        && MessageDigest.isEqual(kept.get().getBytes(UTF_8), hash.getBytes(UTF_8));
  }

  // The condition makes one of two that come at once the loser.
  private boolean used(String hash) {
    return db.sql(
                """
                update installation set set_up_code_hash = null, set_up_at = ?
                where set_up_code_hash = ? and set_up_at is null
                """)
            .params(OffsetDateTime.now(clock), hash)
            .update()
        == 1;
  }

  private static String plain(String typed) {
    return typed.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
  }
}
