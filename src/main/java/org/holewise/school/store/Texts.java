package org.holewise.school.store;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The store's words. */
@Component("storeTexts")
class Texts {

  private final MessageSource words;

  Texts(MessageSource words) {
    this.words = words;
  }

  /** Numbers are shown as they are typed, without marks between thousands. */
  String say(String key, Object... parts) {
    var shown = Arrays.stream(parts).map(Object::toString).toArray();
    return words.getMessage(key, shown, Locale.ENGLISH);
  }

  /**
   * A part that is not in the store's list yet.
   *
   * @param label how it might be called there
   */
  record Unlisted(String part, String label, String refs, int need) {}

  Unlisted unlisted(PartKey part, List<String> refs, int need) {
    return new Unlisted(part.text(), part(part), String.join(", ", refs), need);
  }

  List<Unlisted> unlisted(Demand demand) {
    return demand.unlisted().entrySet().stream()
        .map(need -> unlisted(need.getKey(), List.of(), need.getValue()))
        .toList();
  }

  /** A part as one would write it on a drawer: Resistor 330 Ω. */
  String part(PartKey part) {
    String kind = words.getMessage("kind." + part.kind(), null, part.kind(), Locale.ENGLISH);
    String name = (kind + " " + part.rest()).strip();
    return name.substring(0, 1).toUpperCase(Locale.ENGLISH) + name.substring(1);
  }
}
