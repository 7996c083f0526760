package org.holewise.school.bench;

import java.util.Locale;
import org.holewise.engine.part.Part;
import org.holewise.school.handin.EntryName;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** What a lead is called by how it looks: {@code long lead}, {@code end with the ring}. */
@Component
class PinLabels {

  private final MessageSource words;

  PinLabels(MessageSource words) {
    this.words = words;
  }

  String of(Part part, String pin) {
    String own = say("student.pin." + part.kind().name() + "." + pin, "");
    return own.isEmpty()
        ? say("student.pin.any" + (pin.equals(PinTexts.PIN_1) ? "." + pin : ""), pin, pin)
        : own;
  }

  /** Why a field cannot be kept. */
  String tooLong(int longest) {
    return say("student.long", "", longest);
  }

  /** What an entry is called: an id that a page made up says nothing to anybody. */
  String title(EntryName name) {
    return name.isMadeUp() ? say("student.entry." + name.kind().word(), "") : name.id();
  }

  private String say(String key, String otherwise, Object... parts) {
    return String.valueOf(words.getMessage(key, parts, otherwise, Locale.ROOT));
  }
}
