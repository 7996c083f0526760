package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Length and list as NIST SP 800-63B-4, 3.1.1.2 asks for: 15 characters where a password is the
 * only factor, spaces and all of Unicode taken, none that is on a list of common ones.
 */
@Tag("fast")
class PasswordsTest {

  private final Passwords passwords = new Passwords();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "violet kettle under seven ladders",
        "fifteen letters",
        "zwölf Würfel übrig",
        "🔧🔩⚙️🪛🔧🔋💡🔌🧲🪜🧰🪚🔨🧪🔬"
      })
  void takesLongOnes(String password) {
    assertThat(passwords.wrongWith(password, "Mara Lindqvist")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "short", "only 14 signs!"})
  void refusesShortOnes(String password) {
    assertThat(passwords.wrongWith(password, "Mara Lindqvist")).contains("password.short");
  }

  @Test
  void refusesMoreThanItsHashCanTellApart() {
    // bcrypt reads 72 bytes (Provos and Mazières, "A Future-Adaptable Password Scheme", 1999).
    String most = "x1y2z3".repeat(11) + "abcdef";
    assertThat(passwords.wrongWith(most, "")).isEmpty();
    assertThat(passwords.wrongWith(most + "g", "")).contains("password.long");
    assertThat(passwords.wrongWith(most.substring(1) + "ü", "")).contains("password.long");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "passwordpassword",
        "Password-Password!",
        "1234567890123456",
        "qwertyuiopasdfgh",
        "correct horse battery staple",
        "breadboard breadboard",
        "aaaaaaaaaaaaaaaaaaaa",
        "ab12ab12ab12ab12ab12",
        "Mara Lindqvist 2031",
        "----------------"
      })
  void refusesWhatWouldBeGuessedFirst(String password) {
    assertThat(passwords.wrongWith(password, "Mara Lindqvist")).contains("password.common");
  }
}
