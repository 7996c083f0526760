package org.holewise.school.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.holewise.document.picture.BoardPicture;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.FileTemplateResolver;

/**
 * The picture of the README: a slip marked by the product and drawn by the page's own fragment and
 * style sheet, in a file that carries its colours along. Run this class to write it anew.
 */
public final class MarkedBoard {
  static final Path FILE = Path.of("src/site/marked-board.svg");

  private static final Path STYLES = Path.of("src/main/resources/static/css");
  private static final Pattern TOKEN = Pattern.compile("(--[a-z0-9-]+): ([^;]+);");
  private static final Pattern RULE = Pattern.compile("(?m)^\\.board[^{}]*\\{[^}]*\\}");
  private static final Pattern USE = Pattern.compile("var\\((--[a-z0-9-]+)\\)");
  private static final int EDGE = 16;

  private MarkedBoard() {}

  public static void main(String... none) throws IOException {
    Files.createDirectories(FILE.getParent());
    Files.writeString(FILE, svg());
  }

  /** A lead a column off in the transistor exercise, ringed and its strip dashed. */
  static String svg() throws IOException {
    String lines = Shipped.lines("stage-cue", "column-off");
    MarkSheet mark = Shipped.sheet("stage-cue", lines);
    var build = Shipped.record("stage-cue", lines).build();
    var bench = BenchView.of(Shipped.exercise("stage-cue"), build, mark.highlight());
    return framed(bench.along(), drawn(bench.along(), mark.look().orElseThrow().text()));
  }

  private static String drawn(BoardPicture picture, String said) {
    var templates = new FileTemplateResolver();
    templates.setPrefix("templates/");
    templates.setSuffix(".html");
    var engine = new SpringTemplateEngine();
    engine.setTemplateResolver(templates);
    var values =
        Map.<String, Object>of(
            "picture", picture, "id", "board", "title", "A marked build", "description", said);
    return engine.process("fragments/board", Set.of("board"), new Context(Locale.ROOT, values));
  }

  private static String framed(BoardPicture picture, String drawn) throws IOException {
    int width = (int) Math.ceil(picture.frame().width()) + 2 * EDGE;
    int height = (int) Math.ceil(picture.frame().height()) + 2 * EDGE;
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
        .formatted(width, height, EDGE, style(), drawn.strip());
  }

  private static String style() throws IOException {
    String sheet = Files.readString(STYLES.resolve("board.css"));
    var tokens = tokens(Files.readString(STYLES.resolve("holewise.css")));
    tokens(sheet).forEach(tokens::putIfAbsent);
    String rules =
        RULE.matcher(sheet).results().map(rule -> rule.group()).collect(Collectors.joining("\n"));
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
