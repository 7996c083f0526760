package org.holewise.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.running.LabHour.Seat;
import org.holewise.running.Site;
import org.holewise.running.Visitor;

/** A student with a browser of their own; all share one client's connections, to be many. */
final class Pupil {

  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Pattern SESSION = Pattern.compile("SESSION=([^;]+)");

  /** What the page of an attempt says until it is marked. */
  private static final String WAITS = "is being marked";

  private final Site site;
  private final Seat seat;
  private final HttpClient client;
  private String cookie = "";
  private String token = "";
  private String last = "";

  Pupil(Site site, Seat seat, HttpClient client) {
    this.site = site;
    this.seat = seat;
    this.client = client;
  }

  /** Opens the door, shows the card and arrives at the day's work. */
  void comesIn() throws IOException, InterruptedException {
    token = tokenOf(opens("/card"));
    String target = sends("/card", "code", seat.card());
    opens(target);
  }

  void opensBench() throws IOException, InterruptedException {
    token = tokenOf(opens(bench()));
  }

  /** Hands in and is led to the attempt. */
  void handsIn(String key) throws IOException, InterruptedException {
    last = sends(bench() + "/hand-ins", "key", key);
    if (!last.contains("/attempts/")) {
      throw new IOException("handing in led to " + last);
    }
  }

  /** Whether the last attempt's page has its mark, or nothing was handed in. */
  boolean isMarked() throws IOException, InterruptedException {
    return last.isEmpty() || !opens(last).body().contains(WAITS);
  }

  private String bench() {
    return "/bench/" + seat.bench().id();
  }

  private HttpResponse<String> opens(String path) throws IOException, InterruptedException {
    var answer = send(request(path).GET().build());
    if (answer.statusCode() != 200) {
      throw new IOException(answer.statusCode() + " at " + path.replaceAll("\\d+", "#"));
    }
    return answer;
  }

  /** Sends a form and returns where the answer leads to. */
  private String sends(String path, String name, String text)
      throws IOException, InterruptedException {
    String form = "_csrf=" + encoded(token) + "&" + name + "=" + encoded(text);
    var request =
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(form));
    var answer = send(request.build());
    if (answer.statusCode() != 302 && answer.statusCode() != 303) {
      throw new IOException(answer.statusCode() + " to " + path.replaceAll("\\d+", "#"));
    }
    return Visitor.target(answer);
  }

  private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
    var answer = client.send(request, BodyHandlers.ofString());
    for (String set : answer.headers().allValues("Set-Cookie")) {
      var found = SESSION.matcher(set);
      if (found.find()) {
        cookie = found.group();
      }
    }
    return answer;
  }

  private HttpRequest.Builder request(String path) {
    var request = HttpRequest.newBuilder(site.at(path)).timeout(PATIENCE);
    return (cookie.isEmpty() ? request : request.header("Cookie", cookie))
        .header("Accept", "text/html");
  }

  private static String tokenOf(HttpResponse<String> page) {
    Optional<String> token = Visitor.token(page);
    return token.orElseThrow(() -> new IllegalStateException("a page without a token"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8);
  }
}
