package org.holewise.school.handin;

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

  public static Request of(String key, String content) {
    return new Request(key, Sha256.hex(content));
  }
}
