package org.holewise.running;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Somebody with a browser that keeps cookies, sends forms, and follows no redirect by itself. */
public final class Visitor {

  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final Site school;
  private final CookieManager cookies = new CookieManager();
  private final HttpClient client = HttpClient.newBuilder().cookieHandler(cookies).build();

  public Visitor(Site school) {
    this.school = school;
  }

  public HttpResponse<String> opens(String path) {
    return send(HttpRequest.newBuilder(school.at(path)).header("Accept", "text/html").build());
  }

  /** Opens the page of a form and sends it with these names and entries. */
  public HttpResponse<String> sends(String page, String action, String... form) {
    var fields = new ArrayList<>(List.of(form));
    token(opens(page)).ifPresent(token -> fields.addAll(List.of("_csrf", token)));
    return sendsBare(action, fields.toArray(String[]::new));
  }

  /** Sends a form that was never on a page. */
  public HttpResponse<String> sendsBare(String action, String... form) {
    var body = new StringBuilder();
    for (int i = 0; i < form.length; i += 2) {
      body.append(encoded(form[i])).append('=').append(encoded(form[i + 1])).append('&');
    }
    return send(
        HttpRequest.newBuilder(school.at(action))
            .header("Accept", "text/html")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body.toString()))
            .build());
  }

  public HttpResponse<String> signsIn(String name, String password) {
    return sends("/sign-in", "/sign-in", "name", name, "password", password);
  }

  /** Sends any request, as the visitor. */
  public HttpResponse<String> send(HttpRequest request) {
    return send(request, BodyHandlers.ofString());
  }

  /** Sends a request that is answered with a file. */
  public HttpResponse<byte[]> sendForBytes(HttpRequest request) {
    return send(request, BodyHandlers.ofByteArray());
  }

  private <T> HttpResponse<T> send(HttpRequest request, BodyHandler<T> handler) {
    try {
      return client.send(request, handler);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  public Optional<HttpCookie> cookie(String name) {
    return cookies.getCookieStore().getCookies().stream()
        .filter(cookie -> cookie.getName().equals(name))
        .findFirst();
  }

  /** The token that a form of the page sends along. */
  public static Optional<String> token(HttpResponse<String> page) {
    return TOKEN.matcher(page.body()).results().map(found -> found.group(1)).findFirst();
  }

  /** Where a redirect leads to, without the host. */
  public static String target(HttpResponse<String> redirect) {
    String location = redirect.headers().firstValue("Location").orElse("");
    return location.replaceFirst("^http://[^/]+", "");
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8);
  }
}
