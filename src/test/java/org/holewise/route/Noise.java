package org.holewise.route;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import java.util.List;
import java.util.Random;

/** Requests that nobody's browser sends, one after the other, the same for the same seed. */
final class Noise {

  private static final List<String> METHODS =
      List.of("GET", "POST", "HEAD", "OPTIONS", "PUT", "DELETE", "PATCH", "TRACE", "get", "SPIN");

  /** As they stand in an address; the percent signs are meant. */
  private static final List<String> SEGMENTS =
      List.of(
          "0",
          "-1",
          "9223372036854775807",
          "9223372036854775808",
          "99999999999999999999",
          "1e3",
          "0x1",
          "abc",
          "%31",
          "%00",
          "%0d%0aX-Odd:%201",
          "%2f",
          "..%2f..%2fx",
          "%2e%2e",
          "..",
          "%5c",
          "%ED%A0%80",
          "%F0%9F%8E%AD",
          "%ff%fe",
          "%",
          "%zz",
          "%25%30%30",
          ";a=b",
          "1;a=b",
          "+",
          "%20",
          "%C2%A0",
          "%7B%7D",
          "*",
          "1.json",
          "null",
          "%E2%80%AE1",
          "a".repeat(3000));

  private static final List<String> TAILS =
      List.of("/", "//", "/.", "/..", ";x=1", ".json", "%00", "/%2e%2e/", "?", "?=", "?&&&", "#x");

  private static final List<String> ACCEPTS =
      List.of(
          "*/*",
          "text/html",
          "application/json",
          "text/html;q=0",
          "nonsense",
          "a/b/c",
          "",
          "*/*;q=2",
          "image/png",
          "text/csv",
          "application/problem+json");

  private static final List<String> HEADERS =
      List.of(
          "If-None-Match: \"\"",
          "If-None-Match: *",
          "If-None-Match: W/",
          "If-None-Match: \"1\", ,",
          "If-Modified-Since: yesterday",
          "Range: bytes=-1",
          "Range: bytes=5-2,9-",
          "Range: bytes=0-0,1-1,2-2",
          "X-Part: board",
          "X-Part: \u00ff",
          "Accept-Language: %",
          "Accept-Language: de-DE-x-y-z-",
          "Accept-Encoding: gzip;q=9",
          "Expect: 100-continue",
          "X-Requested-With: x",
          "Sec-Fetch-Mode: cors",
          "Origin: null",
          "Origin: http://elsewhere.example",
          "X-HTTP-Method-Override: DELETE",
          "X-Forwarded-Prefix: //x",
          "X-Forwarded-Host: elsewhere.example",
          "Cookie: theme=\"",
          "Cookie: theme=dark; SESSION=%%%",
          "Authorization: Basic !!",
          "Authorization: Bearer",
          "Authorization: Bearer " + "0".repeat(64),
          "Content-Encoding: gzip");

  private final Random random;
  private final List<Route> routes;
  private final Texts texts;

  /** A request as it goes over the wire. */
  record Request(Route route, String method, String target, byte[] bytes) {

    @Override
    public String toString() {
      String text = new String(bytes, ISO_8859_1);
      return text.length() > 1500 ? text.substring(0, 1500) + "..." : text;
    }
  }

  Noise(Random random, List<Route> routes, List<String> parameters) {
    this.random = random;
    this.routes = routes;
    this.texts = new Texts(random, parameters);
  }

  Request next(String cookie, String token) {
    var route = one(routes);
    String method = often(85) ? route.method() : one(METHODS);
    String target = target(route);
    boolean bodied = !method.equals("GET") && !method.equals("HEAD") || often(3);
    var head = new StringBuilder();
    head.append(method).append(' ').append(target).append(" HTTP/1.1\r\nHost: localhost\r\n");
    if (!cookie.isEmpty()) {
      head.append("Cookie: SESSION=").append(cookie).append("\r\n");
    }
    if (bodied && often(90)) {
      head.append("X-CSRF-TOKEN: ").append(token).append("\r\n");
    }
    head.append("Accept: ").append(often(70) ? "text/html" : one(ACCEPTS)).append("\r\n");
    if (often(25)) {
      head.append(one(HEADERS)).append("\r\n");
    }
    byte[] body = bodied ? body(head) : new byte[0];
    return new Request(route, method, target, joined(head, body));
  }

  private byte[] body(StringBuilder head) {
    var body = texts.body();
    byte[] bytes = body.text().getBytes(UTF_8);
    head.append("Content-Type: ").append(body.type()).append("\r\n");
    head.append("Content-Length: ").append(bytes.length).append("\r\n");
    return bytes;
  }

  private String target(Route route) {
    String path = route.path(name -> often(65) ? String.valueOf(1 + random.nextInt(5)) : segment());
    if (often(5)) {
      path += one(TAILS);
    }
    if (often(25) && !path.contains("?")) {
      path += "?" + texts.form();
    }
    return path.replace(' ', '+');
  }

  private String segment() {
    return often(20) ? URLEncoder.encode(texts.text(), UTF_8) : one(SEGMENTS);
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private boolean often(int percent) {
    return random.nextInt(100) < percent;
  }

  private static byte[] joined(StringBuilder head, byte[] body) {
    byte[] first = head.append("\r\n").toString().getBytes(ISO_8859_1);
    byte[] all = java.util.Arrays.copyOf(first, first.length + body.length);
    System.arraycopy(body, 0, all, first.length, body.length);
    return all;
  }
}
