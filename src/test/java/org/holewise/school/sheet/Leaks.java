package org.holewise.school.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.holewise.engine.part.PartValue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Looks in a text for what a mark's document knows and a student should not: values in the ways in
 * which people write them, shares, marks. What the student wrote and the values of the exercise's
 * parts are no secrets.
 */
final class Leaks {
  private static final Set<String> VALUES = Set.of("expected", "low", "high", "worst", "value");
  private static final Set<String> SHARES = Set.of("probability", "score", "gain");
  private static final List<String> UNITS = List.of("V", "A", "Ω", "ohm");
  private static final List<Integer> PREFIXES = List.of(-6, -3, 0, 3, 6);
  private static final Pattern SHARE_IN_WORDS =
      Pattern.compile("(?i)likely|\\bprobab|\\d+ in \\d+|possible,? (about|more|less)");

  /** A number alone, and with what may be its unit or what it is a share of. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\d.,])(\\d+(?:[.,]\\d+)?)(?: ?(?:[µmkM]?(?:V|A|Ω|ohm)\\b|[µmkM]?Ω|%)| of \\d+|"
              + " marks)?");

  /** Fewer digits than this, without a unit, may be any number: a column, a count. */
  private static final int TELLING = 3;

  private final MarkedCase marked;
  private final JsonNode document;

  private Leaks(MarkedCase marked) {
    this.marked = marked;
    this.document = JsonMapper.shared().readTree(marked.document());
  }

  /** What of the mark's secrets the text gives away. */
  static List<String> in(String text, MarkedCase marked) {
    return new Leaks(marked).in(text);
  }

  private List<String> in(String said) {
    String text = withoutKnown(said);
    var found = new ArrayList<String>();
    SHARE_IN_WORDS.matcher(text).results().forEach(hit -> found.add(hit.group()));
    Set<String> secrets = secrets();
    for (var token : NUMBER.matcher(text).results().toList()) {
      for (String form : List.of(token.group(1), token.group())) {
        if (secrets.contains(form.strip())) {
          found.add(form.strip());
        }
      }
    }
    return found;
  }

  /** The text without what the student wrote, the parts' values and how to write a reading. */
  private String withoutKnown(String said) {
    var known = new ArrayList<String>(List.of("2.04 V", "9.9 mA"));
    known.add(marked.exercise().board().name());
    marked.record().build().ifPresent(build -> known.add(build.board().name()));
    marked.record().readings().values().forEach(written -> known.add(written.text()));
    marked.exercise().parts().forEach(part -> known.add(PartValue.of(part)));
    marked
        .record()
        .build()
        .ifPresent(b -> b.placed().forEach(placed -> placed.marked().ifPresent(known::add)));
    String text = said.replace('\u00a0', ' ');
    for (String each : known) {
      if (!each.isBlank()) {
        text = text.replaceAll("(?<![\\d.,])" + Pattern.quote(each) + "(?![\\d]|[.,]\\d)", " ");
      }
    }
    return text;
  }

  private Set<String> secrets() {
    var secrets = new LinkedHashSet<String>();
    collect(document, "", secrets);
    JsonNode marks = document.path("marks");
    for (String share : List.of("wiring", "readings", "total")) {
      for (int of : List.of(marked.exercise().marks().wiring(), marks.path("of").asInt())) {
        secrets.add(marks.path(share).asInt() + " of " + of);
      }
      secrets.add(marks.path(share).asInt() + " marks");
    }
    return secrets;
  }

  private static void collect(JsonNode node, String field, Set<String> secrets) {
    if (node.isObject()) {
      node.properties().forEach(member -> collect(member.getValue(), member.getKey(), secrets));
    } else if (node.isArray()) {
      node.forEach(each -> collect(each, field, secrets));
    } else if (node.isNumber() && VALUES.contains(field)) {
      secrets.addAll(values(node.decimalValue()));
    } else if (node.isNumber() && SHARES.contains(field)) {
      secrets.addAll(shares(node.decimalValue()));
    }
  }

  /** A value (SI) with two to six digits, with any usual prefix, with and without its unit. */
  private static Set<String> values(BigDecimal value) {
    var written = new LinkedHashSet<String>();
    for (int power : PREFIXES) {
      for (int digits = 2; digits <= 6; digits++) {
        BigDecimal shown = value.scaleByPowerOfTen(power).round(new MathContext(digits));
        for (String number :
            List.of(shown.toPlainString(), stripped(shown), padded(shown, digits))) {
          if (number.replaceAll("\\D", "").replaceFirst("^0+", "").length() >= TELLING) {
            written.add(number);
          }
          for (String unit : UNITS) {
            for (String prefix : List.of("", "µ", "m", "k", "M")) {
              written.add(number + " " + prefix + unit);
              written.add(number + prefix + unit);
            }
          }
        }
      }
    }
    var commas = written.stream().map(text -> text.replace('.', ',')).toList();
    written.addAll(commas);
    return written;
  }

  /** A share as a decimal and in per cent. Whole ones say nothing that a verdict does not. */
  private static Set<String> shares(BigDecimal share) {
    var written = new LinkedHashSet<String>();
    for (int digits = 2; digits <= 6; digits++) {
      BigDecimal shown = share.round(new MathContext(digits));
      if (shown.stripTrailingZeros().scale() > 1) {
        written.add(stripped(shown));
        written.add(stripped(shown).replace('.', ','));
      }
      String cent = stripped(shown.movePointRight(2));
      written.addAll(List.of(cent + " %", cent + "%"));
    }
    return written;
  }

  private static String stripped(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private static String padded(BigDecimal number, int digits) {
    int scale = digits - number.precision() + number.scale();
    return number.setScale(Math.max(scale, number.scale())).toPlainString();
  }
}
