package org.holewise.school.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a mark knows and a student may not: expected values, limits, likelihoods. Numbers are looked
 * for in all the ways in which one could be written; what has fewer than three digits would be
 * found anywhere and is left out.
 */
final class Secrets {

  private static final List<String> FIELDS =
      List.of("expected", "low", "high", "worst", "asBuilt", "probability", "gain", "value");

  private static final List<String> WORDS =
      List.of("expected", "as built", "asBuilt", "probability", "suspects", "likely", "band");

  private static final List<Double> SCALES = List.of(1.0, 1e3, 1e6, 1e-3, 100.0);

  private static final Pattern DRAWING = Pattern.compile("<svg\\b.*?</svg>", Pattern.DOTALL);
  private static final Pattern HEAD = Pattern.compile("<head>.*?</head>", Pattern.DOTALL);
  private static final Pattern MARKS = Pattern.compile("\\d+ of \\d+ marks");

  private final Set<String> numbers = new LinkedHashSet<>();

  /** Learns the secrets of a mark document. */
  void learn(String document) {
    walk(JsonMapper.shared().readTree(document), false);
  }

  /** What students typed, or the exercise says, is no secret. */
  void known(String text) {
    numbers.removeIf(number -> holds(text, number));
  }

  int count() {
    return numbers.size();
  }

  /** The secrets that an answer gives away. */
  List<String> in(String answer) {
    String text = DRAWING.matcher(HEAD.matcher(answer).replaceAll("")).replaceAll("");
    var found =
        Stream.concat(
            numbers.stream().filter(number -> holds(text, number)),
            WORDS.stream().filter(word -> says(text, word)));
    return Stream.concat(found, MARKS.matcher(text).results().map(r -> r.group())).toList();
  }

  private void walk(JsonNode node, boolean secret) {
    if (node.isNumber() && secret) {
      learn(node.asDouble());
    }
    node.properties()
        .forEach(field -> walk(field.getValue(), secret || FIELDS.contains(field.getKey())));
    if (node.isArray()) {
      node.forEach(element -> walk(element, secret));
    }
  }

  private void learn(double value) {
    double size = Math.abs(value);
    Stream<String> written =
        SCALES.stream()
            .map(scale -> scale * size)
            .flatMap(
                scaled ->
                    Stream.concat(
                        Stream.of(Double.toString(scaled)),
                        DoubleStream.of(1, 2, 3, 4)
                            .mapToObj(
                                n -> String.format(Locale.ROOT, "%." + (int) n + "f", scaled))));
    Stream<String> shown =
        Stream.of(Unit.VOLT, Unit.AMP, Unit.OHM)
            .flatMap(unit -> Stream.of(Display.reading(size, unit), Display.value(size, unit)))
            .map(text -> text.replaceAll("[^0-9.].*", ""));
    Stream.concat(written, shown)
        .filter(number -> number.replaceAll("[^1-9]", "").length() >= 2)
        .filter(number -> number.replaceAll("[^0-9]", "").replaceFirst("^0+", "").length() >= 3)
        .forEach(numbers::add);
  }

  private static boolean holds(String text, String number) {
    return Pattern.compile("(?<![0-9.A-Za-z-])" + Pattern.quote(number) + "(?![0-9])")
        .matcher(text)
        .find();
  }

  private static boolean says(String text, String word) {
    return Pattern.compile("\\b" + word + "\\b", Pattern.CASE_INSENSITIVE).matcher(text).find();
  }
}
