package org.holewise.school.account;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest under which secrets that are random themselves are kept. Not for passwords. */
public final class Sha256 {

  private Sha256() {}

  public static String hex(String secret) {
    try {
      var digest = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
