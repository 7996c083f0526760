package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One address that guesses is stopped, one that many people sign in from is not. */
class GuessingIT {

  private static final String PASSWORD = "violet kettle under seven ladders";

  /** As many as SignInDoor lets an address try. */
  private static final int TRIES_BY_ADDRESS = 300;

  @Test
  void fromOneAddressIsStopped(@TempDir Path data) {
    try (var school = RunningSchool.plain(data)) {
      school.part(People.class).add("Tom", Role.TEACHER, PASSWORD);
      // A right one between, which does not count.
      assertThat(new Visitor(school).signsIn("Tom", PASSWORD).statusCode()).isEqualTo(302);
      var guesser = new Visitor(school);
      for (int i = 0; i < TRIES_BY_ADDRESS; i++) {
        guesser.signsIn("Zed", "guess number " + i);
      }
      assertThat(guesser.signsIn("Zoe", "a first guess").body()).contains("too many tries");
      assertThat(new Visitor(school).signsIn("Tom", PASSWORD).body()).contains("too many tries");
    }
  }
}
