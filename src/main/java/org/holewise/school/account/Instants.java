package org.holewise.school.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Times out of rows. */
public final class Instants {

  private Instants() {}

  public static Instant of(ResultSet row, String column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  /** Empty where the column is null. */
  public static Optional<Instant> maybe(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }
}
