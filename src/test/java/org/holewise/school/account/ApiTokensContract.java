package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.holewise.store.HandClock;
import org.holewise.store.Store;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.NoOpPasswordEncoder;

/** What holds of the tokens on every kind of database. */
abstract class ApiTokensContract {

  private final HandClock clock = new HandClock();
  private final JdbcClient db;
  private final ApiTokens tokens;
  private final Person mara;
  private final Person tom;

  ApiTokensContract(Store store) {
    db = store.migrated();
    tokens = new ApiTokens(db, new SecureRandom(), clock);
    var people = new People(db, NoOpPasswordEncoder.getInstance(), clock);
    mara = people.addWithoutPassword("Mara Lindqvist", Role.TEACHER);
    tom = people.addWithoutPassword("Tom Okafor", Role.TEACHER);
  }

  @Test
  void letTheirOwnerIn() {
    String token = tokens.make(mara, "lab printer");
    assertThat(tokens.holder(token)).map(SignedIn::person).contains(mara);
    assertThat(tokens.holder(token + "0")).isEmpty();
    assertThat(tokens.holder("")).isEmpty();
  }

  @Test
  void are256BitsAndNeverTheSame() {
    String token = tokens.make(mara, "one");
    assertThat(token).matches("[0-9a-f]{64}");
    assertThat(tokens.make(mara, "two")).isNotEqualTo(token);
  }

  @Test
  void areKeptAsTheirSha256Only() {
    tokens.make(mara, "one");
    db.sql("update api_tokens set token_hash = ?")
        // SHA-256 of "abc": FIPS 180-4, example of the Secure Hash Standard.
        .param("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
        .update();
    assertThat(tokens.holder("abc")).map(SignedIn::person).contains(mara);
  }

  @Test
  void areDeadOnceRevokedByTheirOwner() {
    String token = tokens.make(mara, "lab printer");
    long id = tokens.of(mara).get(0).id();
    assertThat(tokens.revoke(tom, id)).isFalse();
    assertThat(tokens.holder(token)).isPresent();
    assertThat(tokens.revoke(mara, id)).isTrue();
    assertThat(tokens.holder(token)).isEmpty();
    assertThat(tokens.revoke(mara, id)).isFalse();
    assertThat(tokens.of(mara).get(0).revoked()).contains(clock.instant());
  }

  @Test
  void areRevokedTogether() {
    String first = tokens.make(mara, "one");
    String second = tokens.make(mara, "two");
    String other = tokens.make(tom, "three");
    tokens.revokeAll(mara);
    assertThat(tokens.holder(first)).isEmpty();
    assertThat(tokens.holder(second)).isEmpty();
    assertThat(tokens.holder(other)).isPresent();
  }

  @Test
  void areShownToTheirOwnerLatestFirst() {
    tokens.make(mara, " one ");
    tokens.make(mara, "two");
    tokens.make(tom, "three");
    assertThat(tokens.of(mara)).extracting(ApiToken::label).containsExactly("two", "one");
  }

  @Test
  void tellTheirLastUseToTheMinute() {
    String token = tokens.make(mara, "lab printer");
    assertThat(lastUsed()).isEmpty();
    Instant first = clock.instant();
    tokens.holder(token);
    clock.forward(Duration.ofSeconds(59));
    tokens.holder(token);
    assertThat(lastUsed()).contains(first);
    clock.forward(Duration.ofSeconds(2));
    tokens.holder(token);
    assertThat(lastUsed()).contains(clock.instant());
  }

  private Optional<Instant> lastUsed() {
    return tokens.of(mara).get(0).lastUsed();
  }
}
