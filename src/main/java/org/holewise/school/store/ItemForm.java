package org.holewise.school.store;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** An item as typed. */
record ItemForm(String label, String part, String drawer, String minimum, String pack) {

  private static final int LONGEST_LABEL = 100;
  private static final int LONGEST_DRAWER = 40;

  ItemForm(
      @Nullable String label,
      @Nullable String part,
      @Nullable String drawer,
      @Nullable String minimum,
      @Nullable String pack) {
    this.label = Objects.requireNonNullElse(label, "");
    this.part = Objects.requireNonNullElse(part, "");
    this.drawer = Objects.requireNonNullElse(drawer, "");
    this.minimum = Objects.requireNonNullElse(minimum, "");
    this.pack = Objects.requireNonNullElse(pack, "");
  }

  static ItemForm of(Item item) {
    return new ItemForm(
        item.label(),
        item.part().map(PartKey::text).orElse(""),
        item.drawer(),
        Integer.toString(item.minimum()),
        Integer.toString(item.pack()));
  }

  /** The item, or empty and what is wrong with each field. */
  Optional<Item> read(long id, Errors found) {
    checkText(label, "label", LONGEST_LABEL, found);
    checkText(drawer, "drawer", LONGEST_DRAWER, found);
    int least = number(minimum, "minimum", 0, found);
    int many = number(pack, "pack", 1, found);
    var key = part.isBlank() ? Optional.<PartKey>empty() : PartKey.read(part);
    if (key.isEmpty() && !part.isBlank()) {
      found.rejectValue("part", "store.item.part.wrong");
    }
    return found.hasErrors()
        ? Optional.empty()
        : Optional.of(new Item(id, tidy(label), key, tidy(drawer), least, many));
  }

  private static void checkText(String text, String field, int longest, Errors found) {
    if (text.isBlank()) {
      found.rejectValue(field, "store.item." + field + ".missing");
    } else if (tidy(text).length() > longest) {
      found.rejectValue(field, "store.item." + field + ".long");
    }
  }

  private static int number(String text, String field, int least, Errors found) {
    OptionalInt read = Typed.read(text);
    if (read.isEmpty() || read.getAsInt() < least) {
      found.rejectValue(field, "store.item." + field + ".wrong");
      return least;
    }
    return read.getAsInt();
  }

  private static String tidy(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
