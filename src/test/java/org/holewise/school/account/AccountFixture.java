package org.holewise.school.account;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.NoOpPasswordEncoder;

/** For tests of other packages: people in a database without the application round it. */
public final class AccountFixture {

  private AccountFixture() {}

  public static People people(JdbcClient db, Clock clock) {
    return new People(db, NoOpPasswordEncoder.getInstance(), clock);
  }

  public static Person teacher(JdbcClient db, Clock clock, String name) {
    return people(db, clock).addWithoutPassword(name, Role.TEACHER);
  }
}
