package org.holewise.school.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** What somebody typed into a form, and what is wrong with it by the name of the field. */
final class Typed {

  /** More than a school's store ever moves at once. */
  static final int MOST = 100_000;

  static final int LONGEST_NOTE = 1000;

  private final Map<String, String> entries;
  private final Map<String, String> wrong = new LinkedHashMap<>();
  private final Texts texts;

  Typed(Map<String, String> entries, Texts texts) {
    this.entries = Map.copyOf(entries);
    this.texts = texts;
  }

  static Typed nothing(Texts texts) {
    return new Typed(Map.of(), texts);
  }

  /** As typed, or what the page proposes where the form has not been sent. */
  public String text(String field, Object proposed) {
    return entries.getOrDefault(field, proposed.toString());
  }

  /** A quantity; nothing typed is none, and what is none of these is noted as wrong. */
  int quantity(String field) {
    String typed = text(field, "").strip();
    if (typed.isEmpty()) {
      return 0;
    }
    var read = read(typed);
    if (read.isEmpty()) {
      refuse(field, "store.quantity.wrong", typed, MOST);
    }
    return read.orElse(0);
  }

  /** A quantity that cannot be left out. */
  int wanted(String field, int least) {
    int quantity = quantity(field);
    if (!wrong.containsKey(field) && (text(field, "").isBlank() || quantity < least)) {
      refuse(field, "store.quantity.missing", least);
    }
    return quantity;
  }

  /** The key that was hidden in the form. */
  String key() {
    try {
      return UUID.fromString(text("key", "")).toString();
    } catch (IllegalArgumentException notFromAPage) {
      throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
    }
  }

  /** A note, without spaces at its ends. */
  String note(String field) {
    String note = text(field, "").strip();
    if (note.length() > LONGEST_NOTE) {
      refuse(field, "store.note.long", note.length());
    }
    return note;
  }

  void refuse(String field, String key, Object... parts) {
    wrong.put(field, texts.say(key, parts));
  }

  void refuse(String field, Outcome.Shortage shortage) {
    String place = shortage.place() == Place.STORE ? "store" : "class";
    refuse(field, "store.short." + place, shortage.item().label(), shortage.there());
  }

  public Map<String, String> wrong() {
    return wrong;
  }

  public boolean isSound() {
    return wrong.isEmpty();
  }

  static OptionalInt read(String typed) {
    String digits = typed.strip();
    if (!digits.matches("[0-9]{1,6}") || Integer.parseInt(digits) > MOST) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(digits));
  }
}
