package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.holewise.engine.part.Pin;

/**
 * What a printed source says of a circuit, such as {@code V(a,b)=1.5}, {@code I(R1.1)=0.5m}, {@code
 * P(R1)=0.36}, {@code Rth(a,b)=6k} or {@code seen(B1)=198.70}, the resistance that a source feeds.
 * It is met to one unit of the last digit printed, or to a band in per cent where the row says so:
 * {@code I(R1.1)=1.10m~1%}.
 */
record Expected(String what, String first, String second, double value, double slack) {
  private static final Pattern FORM =
      Pattern.compile(
          "(V|I|P|Rth|seen)\\(([^,)]+)(?:,([^)]+))?\\)=(-?[0-9.]+)([mukM]?)(?:~(.*)%)?");

  static Expected read(String text) {
    Matcher m = FORM.matcher(text);
    if (!m.matches()) {
      throw new IllegalArgumentException(text);
    }
    double value = Rows.number(m.group(4) + m.group(5));
    double slack =
        m.group(6) == null
            ? lastDigit(m.group(4), m.group(5))
            : Math.abs(value) * Double.parseDouble(m.group(6)) / 100;
    String second = m.group(3) == null ? "" : m.group(3);
    return new Expected(m.group(1), m.group(2), second, value, slack);
  }

  private static double lastDigit(String digits, String prefix) {
    int dot = digits.indexOf('.');
    int places = dot < 0 ? 0 : digits.length() - dot - 1;
    return Math.pow(10, -places) * Rows.number("1" + prefix);
  }

  void check(Rows rows, OperatingPoint point) {
    assertThat(actual(rows, point)).as(toString()).isCloseTo(value, within(slack));
  }

  private double actual(Rows rows, OperatingPoint point) {
    return switch (what) {
      case "V" -> point.volts(rows.at(first), rows.at(second));
      case "I" -> point.current(Rows.lead(first));
      case "P" -> point.power(first);
      case "Rth" -> point.response(rows.at(first), rows.at(second)).ohms();
      default ->
          -point.volts(Rows.pin(first + ".+"), Rows.pin(first + ".-"))
              / point.current(new Pin(first, "+"));
    };
  }
}
