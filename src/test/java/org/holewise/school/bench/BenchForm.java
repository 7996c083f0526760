package org.holewise.school.bench;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.holewise.running.Visitor;
import org.springframework.web.util.HtmlUtils;

/** The form of a page as a browser would send it. */
final class BenchForm {

  private static final Pattern INPUT = Pattern.compile("<input\\b[^>]*>");
  private static final Pattern ATTRIBUTE = Pattern.compile("\\b(name|value|type)=\"([^\"]*)\"");

  private final Visitor visitor;
  private final Map<String, String> fields = new LinkedHashMap<>();

  private BenchForm(Visitor visitor, String page) {
    this.visitor = visitor;
    var inputs = INPUT.matcher(page);
    while (inputs.find()) {
      var attributes = new LinkedHashMap<String, String>();
      var found = ATTRIBUTE.matcher(inputs.group());
      while (found.find()) {
        attributes.put(found.group(1), HtmlUtils.htmlUnescape(found.group(2)));
      }
      if (attributes.containsKey("name")) {
        fields.put(attributes.get("name"), attributes.getOrDefault("value", ""));
      }
    }
  }

  /** The form on a page that was just opened. */
  static BenchForm on(Visitor visitor, String path) {
    return new BenchForm(visitor, visitor.opens(path).body());
  }

  static BenchForm in(Visitor visitor, HttpResponse<String> answer) {
    return new BenchForm(visitor, answer.body());
  }

  BenchForm type(String... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      fields.put(pairs[i], pairs[i + 1]);
    }
    return this;
  }

  /** The checked build of the moonlight exercise, without its readings. */
  BenchForm typeLayout() {
    return type("part:P1:+", "+a3", "part:P1:-", "-a3", "part:S1:1", "b22", "part:S1:2", "b24")
        .type("part:R1:1", "b10", "part:R1:2", "b14", "part:D1:a", "c14", "part:D1:k", "c22")
        .type(spare() + ":from", "+a10", spare() + ":to", "a10")
        .type("line", "link a24 -a24");
  }

  /** The entry of the empty row for a link. */
  String spare() {
    return fields.keySet().stream()
        .filter(name -> name.startsWith("link:") && name.endsWith(":from"))
        .reduce((first, last) -> last)
        .map(name -> name.substring(0, name.lastIndexOf(':')))
        .orElseThrow();
  }

  String field(String name) {
    return fields.getOrDefault(name, "no such field");
  }

  HttpResponse<String> sendTo(String action) {
    return visitor.sendsBare(
        action,
        fields.entrySet().stream()
            .flatMap(field -> Stream.of(field.getKey(), field.getValue()))
            .toArray(String[]::new));
  }
}
