package org.holewise.school.account;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * Which passwords are taken: long ones that are not among the first that anybody would guess; no
 * other composition rules (NIST SP 800-63B-4, 3.1.1.2).
 */
@Component
public class Passwords {

  private static final int SHORTEST = 15;

  /** What the hash (bcrypt) can tell apart. */
  private static final int MOST_BYTES = 72;

  /** A word of up to this length, said again and again, is as good as that word. */
  private static final int LONGEST_REPEATED = 8;

  private final Set<String> commonest;

  Passwords() {
    try (var list = Passwords.class.getResourceAsStream("/commonest-passwords.txt")) {
      if (list == null) {
        throw new IllegalStateException("commonest-passwords.txt is not in the jar");
      }
      commonest =
          new String(list.readAllBytes(), UTF_8)
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .map(Passwords::folded)
              .collect(Collectors.toUnmodifiableSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The key of the text that says why the password is not taken, or empty where it is. */
  public Optional<String> wrongWith(String password, String name) {
    if (password.codePointCount(0, password.length()) < SHORTEST) {
      return Optional.of("password.short");
    }
    if (password.getBytes(UTF_8).length > MOST_BYTES) {
      return Optional.of("password.long");
    }
    String plain = folded(password);
    if (commonest.contains(plain)
        || repeats(password)
        || repeats(plain)
        || saysTheName(plain, folded(name))) {
      return Optional.of("password.common");
    }
    return Optional.empty();
  }

  private static String folded(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
  }

  private static boolean repeats(String word) {
    for (int length = 1; length <= LONGEST_REPEATED && length < word.length(); length++) {
      if (word.startsWith(word.substring(length))
          && word.regionMatches(length, word, 0, word.length() - length)) {
        return true;
      }
    }
    return false;
  }

  private static boolean saysTheName(String word, String name) {
    return !name.isEmpty()
        && word.contains(name)
        && word.replace(name, "").length() <= SHORTEST / 3;
  }
}
