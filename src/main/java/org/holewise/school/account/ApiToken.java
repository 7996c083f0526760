package org.holewise.school.account;

import java.time.Instant;
import java.util.Optional;

/** What the account page tells of a token; the token itself is not kept. */
record ApiToken(
    long id, String label, Instant made, Optional<Instant> lastUsed, Optional<Instant> revoked) {}
