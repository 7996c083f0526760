package org.holewise.school.handin;

import java.util.regex.Pattern;
import org.holewise.school.account.Sha256;

/**
 * What makes a repeated request harmless.
 *
 * @param key made up by the page that sends the request, the same in each repeat
 * @param digest of everything that the request says
 */
public record Request(String key, String digest) {

  /** As long as keys may be. */
  public static final int LONGEST_KEY = 64;

  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9-]{1," + LONGEST_KEY + "}");

  /** Whether a text can be a key. */
  public static boolean isKey(String text) {
    return KEY.matcher(text).matches();
  }

  public static Request of(String key, String content) {
    return new Request(key, Sha256.hex(content));
  }
}
