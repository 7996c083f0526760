package org.holewise.route;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What is typed into forms and documents: sound, odd, and hostile. */
final class Texts {

  private static final int LARGE = 300 * 1024;
  private static final int DEEP = 20_000;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "1",
          "2",
          "3",
          "-1",
          "2147483648",
          "9223372036854775808",
          "1e308",
          "NaN",
          "true",
          "null",
          "b10",
          "b10 b15",
          "1=b10 2=b15",
          "R1 b10 b15",
          "link +a10 a10",
          "5.01 V",
          "extra volts R1.1 P1.- 5 V",
          "lit",
          "PLACE",
          "VERDICTS",
          "TEACHER",
          "STUDENT",
          "on",
          "2031-03-04",
          "2031-02-30",
          "9999999-01-01",
          "stage-moonlight",
          "resistor 330",
          "STORE",
          "Wren",
          "Wren\nSorrel\nLinden",
          "a,b;c\td",
          "=1+1",
          "'",
          "\"",
          "<b>x</b>",
          "%",
          "${7*7}",
          "__${7*7}__::x",
          "{0}",
          "../../x",
          "\u0000",
          "a\u0000b",
          "\r\nX: y",
          "\uD83C\uDFAD",
          "\u202Eabc",
          "e\u0301",
          "\u00a0",
          "\uFEFF",
          "\uFFFF",
          "k\u212Aelvin",
          "\u0130",
          "x".repeat(101),
          "x".repeat(1001),
          "9".repeat(400),
          "R1 ".repeat(2000));

  private static final List<String> NAMES =
      List.of(
          "key",
          "line",
          "part:R1:1",
          "part:R1:2",
          "part:R1:marked",
          "part:D1:a",
          "part:X9:1",
          "link:n4:from",
          "link:n4:to",
          "link:zz:from",
          "reading:supply",
          "reading:none",
          "extra:e1",
          "was:part:R1",
          "base:part:R1",
          "was:reading:supply",
          "base:reading:supply",
          "_method",
          "_csrf",
          "name[0]",
          "a.b.c",
          "class.module.classLoader",
          "",
          "x".repeat(300));

  private static final List<String> TYPES =
      List.of(
          "text/plain",
          "application/xml",
          "multipart/form-data",
          "multipart/form-data; boundary=x",
          "application/json; charset=utf-16",
          "application/json; charset=nothing",
          "application/x-www-form-urlencoded; charset=utf-32",
          "nonsense",
          "*/*",
          "",
          "application/yaml",
          "application/problem+json");

  private final Random random;
  private final List<String> names;

  record Body(String type, String text) {}

  /** {@code known}: names that the application itself asks for. */
  Texts(Random random, List<String> known) {
    this.random = random;
    var all = new ArrayList<>(NAMES);
    all.addAll(known);
    all.addAll(known);
    names = List.copyOf(all);
  }

  Body body() {
    int kind = random.nextInt(1000);
    if (kind < 550) {
      return new Body("application/x-www-form-urlencoded", form());
    }
    if (kind < 850) {
      return new Body("application/json", kind < 750 ? entries() : brokenJson());
    }
    if (kind < 853) {
      return new Body("application/json", "\"" + "x".repeat(LARGE) + "\"");
    }
    if (kind < 856) {
      return new Body("application/x-www-form-urlencoded", "line=" + "x".repeat(LARGE));
    }
    if (kind < 858) {
      return new Body("application/json", "[".repeat(DEEP));
    }
    return new Body(one(TYPES), random.nextBoolean() ? form() : brokenJson());
  }

  /** Names and texts as a form sends them, now and then not quite. */
  String form() {
    var form = new StringBuilder();
    for (int i = random.nextInt(6); i >= 0; i--) {
      form.append(encoded(one(names))).append('=').append(encoded(text())).append('&');
    }
    if (random.nextInt(20) == 0) {
      form.append(one(List.of("%", "%zz=1", "=%ED%A0%80", "a=%ff", "&&", "a", "=")));
    }
    return form.toString();
  }

  String text() {
    return one(TEXTS);
  }

  private String entries() {
    String name = one(List.of("part:R1", "part:D1", "link:n4", "reading:supply", "extra:e1", "x"));
    return "{\"entries\":[{\"name\":%s,\"text\":%s,\"base\":%s}]}"
        .formatted(
            quoted(random.nextInt(5) == 0 ? text() : name),
            quoted(text()),
            one(List.of("0", "1", "7", "-1", "1.5", "\"2\"", "null", "1e400", "[]")));
  }

  private String brokenJson() {
    String sound = entries();
    return switch (random.nextInt(6)) {
      case 0 -> sound.substring(0, random.nextInt(sound.length()));
      case 1 -> sound.replace(':', ',');
      case 2 -> "[" + sound + "]";
      case 3 ->
          one(List.of("null", "1", "\"\\ud800\"", "{\"entries\":{}}", "{\"entries\":[null]}"));
      case 4 -> sound + sound;
      default -> "{\"entries\":[" + "{},".repeat(random.nextInt(500)) + "{}]}";
    };
  }

  private static String quoted(String text) {
    var quoted = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      quoted.append(c < ' ' || c == '"' || c == '\\' ? "\\u%04x".formatted((int) c) : c);
    }
    return quoted.append('"').toString();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8);
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
