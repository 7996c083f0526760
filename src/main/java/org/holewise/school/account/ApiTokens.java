package org.holewise.school.account;

import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tokens by which a program acts for a teacher: 256 random bits each, of which a hash is kept. */
@Repository
public class ApiTokens {

  private static final int BYTES = 32;

  /** Last use is told to the minute: not every call need write. */
  private static final Duration NOTICED = Duration.ofMinutes(1);

  private final JdbcClient db;
  private final SecureRandom random;
  private final Clock clock;

  ApiTokens(JdbcClient db, SecureRandom random, Clock clock) {
    this.db = db;
    this.random = random;
    this.clock = clock;
  }

  /** Makes a token and returns it, for the only time. */
  public String make(Person owner, String label) {
    var bits = new byte[BYTES];
    random.nextBytes(bits);
    String token = HexFormat.of().formatHex(bits);
    db.sql("insert into api_tokens (person, label, token_hash, made_at) values (?, ?, ?, ?)")
        .params(owner.id(), label.strip(), Sha256.hex(token), now())
        .update();
    return token;
  }

  List<ApiToken> of(Person owner) {
    return db.sql(
            """
            select id, label, made_at, last_used_at, revoked_at from api_tokens
            where person = ? order by id desc
            """)
        .param(owner.id())
        .query(ApiTokens::token)
        .list();
  }

  /** Ends one of the owner's tokens; false where the owner has no such token in use. */
  boolean revoke(Person owner, long id) {
    return db.sql(
                """
                update api_tokens set revoked_at = ?
                where id = ? and person = ? and revoked_at is null
                """)
            .params(now(), id, owner.id())
            .update()
        == 1;
  }

  public void revokeAll(Person owner) {
    db.sql("update api_tokens set revoked_at = ? where person = ? and revoked_at is null")
        .params(now(), owner.id())
        .update();
  }

  /** Who the token acts for, or empty where it was never made or is revoked. */
  Optional<SignedIn> holder(String token) {
    String hash = Sha256.hex(token);
    var holder =
        db.sql(
                """
                select p.id, p.name, p.role from people p join api_tokens t on t.person = p.id
                where t.token_hash = ? and t.revoked_at is null and p.left_at is null
                """)
            .param(hash)
            .query((row, n) -> new SignedIn(People.person(row, n), ""))
            .optional();
    holder.ifPresent(found -> notice(hash));
    return holder;
  }

  private void notice(String hash) {
    db.sql(
            """
            update api_tokens set last_used_at = ?
            where token_hash = ? and (last_used_at is null or last_used_at < ?)
            """)
        .params(now(), hash, now().minus(NOTICED))
        .update();
  }

  private OffsetDateTime now() {
    return OffsetDateTime.now(clock);
  }

  private static ApiToken token(ResultSet row, int number) throws SQLException {
    return new ApiToken(
        row.getLong("id"),
        row.getString("label"),
        Instants.of(row, "made_at"),
        Instants.maybe(row, "last_used_at"),
        Instants.maybe(row, "revoked_at"));
  }
}
