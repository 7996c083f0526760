package org.holewise.school.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A picture of the README: drawn by a page's own fragment and style sheet, in a file that carries
 * its colours along.
 */
final class SitePicture {
  private static final Path STYLES = Path.of("src/main/resources/static/css");
  private static final Pattern TOKEN = Pattern.compile("(--[a-z0-9-]+): ([^;]+);");
  private static final Pattern USE = Pattern.compile("var\\((--[a-z0-9-]+)\\)");
  private static final int EDGE = 16;

  private SitePicture() {}

  static void write(Path file, String svg) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, svg);
  }

  /**
   * @param drawn an SVG of that size
   * @param of the style sheet, and the class that its rules are for
   */
  static String framed(double width, double height, String drawn, String of) throws IOException {
    return """
    <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$d" viewBox="0 0 %1$d %2$d">
    <style>
    %4$s
    </style>
    <rect width="%1$d" height="%2$d" rx="6" fill="#ffffff"/>
    <g transform="translate(%3$d %3$d)">
    %5$s
    </g>
    </svg>
    """
        .formatted(edged(width), edged(height), EDGE, style(of), drawn.strip());
  }

  private static int edged(double length) {
    return (int) Math.ceil(length) + 2 * EDGE;
  }

  private static String style(String of) throws IOException {
    String sheet = Files.readString(STYLES.resolve(of + ".css"));
    var tokens = tokens(Files.readString(STYLES.resolve("holewise.css")));
    tokens(sheet).forEach(tokens::putIfAbsent);
    var rule = Pattern.compile(String.format(Locale.ROOT, "(?m)^\\.%s[^{}]*\\{[^}]*\\}", of));
    String rules =
        rule.matcher(sheet).results().map(one -> one.group()).collect(Collectors.joining("\n"));
    return USE.matcher(USE.matcher(rules).replaceAll(use -> value(tokens, use.group(1))))
        .replaceAll(use -> value(tokens, use.group(1)));
  }

  private static String value(Map<String, String> tokens, String name) {
    return Matcher.quoteReplacement(tokens.getOrDefault(name, "none"));
  }

  /** The first value of each token: the light one. */
  private static Map<String, String> tokens(String sheet) {
    var tokens = new LinkedHashMap<String, String>();
    TOKEN.matcher(sheet).results().forEach(t -> tokens.putIfAbsent(t.group(1), t.group(2)));
    return tokens;
  }
}
