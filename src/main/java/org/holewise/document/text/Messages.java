package org.holewise.document.text;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * The sentences of one language. In a sentence {@code {0}} stands for its first part; a part is put
 * in as it is, so that braces in it stay text. Immutable.
 */
public final class Messages {
  private static final String BUNDLE = "org.holewise.document.messages";
  private static final Messages ENGLISH = new Messages(Locale.ROOT);

  private final ResourceBundle bundle;

  private Messages(Locale locale) {
    var onlyAsked = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);
    bundle = ResourceBundle.getBundle(BUNDLE, locale, onlyAsked);
  }

  public static Messages english() {
    return ENGLISH;
  }

  /** The language of a reader; English where there is no file for it. */
  public static Messages in(Locale locale) {
    return new Messages(locale);
  }

  public boolean has(String key) {
    return bundle.containsKey(key);
  }

  /** The sentence of a key, if there is one. */
  public Optional<String> find(String key) {
    return has(key) ? Optional.of(say(key)) : Optional.empty();
  }

  /**
   * The sentence of a key with its parts put in.
   *
   * @throws IllegalArgumentException where there is no such key
   */
  public String say(String key, Object... parts) {
    try {
      return fill(bundle.getString(key), parts);
    } catch (MissingResourceException missing) {
      throw new IllegalArgumentException("no sentence for " + key, missing);
    }
  }

  private static String fill(String sentence, Object... parts) {
    var filled = new StringBuilder();
    int from = 0;
    for (int open = sentence.indexOf('{'); open >= 0; open = sentence.indexOf('{', from)) {
      int close = sentence.indexOf('}', open);
      int part = Integer.parseInt(sentence.substring(open + 1, close));
      filled.append(sentence, from, open).append(part < parts.length ? parts[part] : "");
      from = close + 1;
    }
    return filled.append(sentence, from, sentence.length()).toString();
  }
}
