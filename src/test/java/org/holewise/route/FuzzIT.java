package org.holewise.route;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.holewise.route.Noise.Request;
import org.holewise.route.Wire.Answer;
import org.holewise.running.LabHour;
import org.holewise.running.RunningSchool;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Whatever is sent, by whomever: an answer comes, it is not the server's fault, it tells nothing of
 * the program's inside, and the data stay in order. The same requests in each run.
 */
class FuzzIT {

  private static final Logger log = LoggerFactory.getLogger(FuzzIT.class);

  private static final int REQUESTS = Integer.getInteger("holewise.fuzz", 20_000);

  /** Quicker, and no more is asked of the data than that they are in order. */
  private static final String IN_MEMORY = "--spring.datasource.url=jdbc:h2:mem:fuzz";

  private static final int CONNECTIONS = 6;
  private static final long SEED = 20310304;

  /** Words that only the program's inside has; nothing that is sent has them. */
  private static final Pattern INSIDE =
      Pattern.compile(
          "Exception|\\tat |org\\.(springframework|thymeleaf|h2|postgresql|holewise|apache)|java\\."
              + "(lang|util)|tools\\.jackson|Whitelabel|Apache Tomcat|SQL statement");

  @TempDir private Path data;

  private final Map<String, Integer> statuses = Collections.synchronizedMap(new TreeMap<>());
  private final List<String> wrong = Collections.synchronizedList(new ArrayList<>());

  @Test
  void isAlwaysAnsweredAndNeverAFault() throws Exception {
    try (var school = RunningSchool.plain(data, IN_MEMORY)) {
      var seats = LabHour.begun(school, Cast.SIZE).seats();
      long start = System.nanoTime();
      var threads = Executors.newFixedThreadPool(CONNECTIONS);
      var sending = new ArrayList<Future<?>>();
      for (int i = 0; i < CONNECTIONS; i++) {
        var random = new Random(SEED + i);
        var seat = seats.get(i % seats.size());
        sending.add(threads.submit(() -> send(school, seat, random)));
      }
      threads.shutdown();
      for (Future<?> each : sending) {
        each.get(15, TimeUnit.MINUTES);
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      log.info("{} requests in {} s: {}", REQUESTS, Math.round(seconds), statuses);
      assertThat(wrong).isEmpty();
      assertThat(statuses.values().stream().mapToInt(Integer::intValue).sum())
          .isGreaterThanOrEqualTo(REQUESTS / CONNECTIONS * CONNECTIONS);
      assertThat(statuses).containsKeys("200", "302", "400", "403", "404", "405");
      assertThat(Order.wrongWith(school.part(JdbcClient.class))).isEmpty();
    }
  }

  private Void send(RunningSchool school, LabHour.Seat seat, Random random) throws IOException {
    var noise = new Noise(random, Route.of(school), Route.parameters(school));
    var guests = new ArrayList<Guest>();
    for (Role role : Role.values()) {
      guests.add(new Guest(school, seat, role));
    }
    var wire = new Wire(school.port());
    for (int i = 0; i < REQUESTS / CONNECTIONS && wrong.size() < 20; i++) {
      // Now and then nobody.
      int who = random.nextInt(guests.size() + 1);
      wire = wire.orNew(school.port());
      if (who < guests.size()) {
        var guest = guests.get(who);
        if (!guest.isIn()) {
          guest.comesIn();
        }
        var answer = sent(wire, noise.next(guest.cookie(), guest.token()));
        wire = wire.orNew(school.port());
        if (isTheWayIn(answer) && !isIn(wire, guest)) {
          guest.goesOut();
        }
      } else {
        sent(wire, noise.next("", ""));
      }
    }
    wire.close();
    return null;
  }

  private static boolean isTheWayIn(Answer answer) {
    return answer.status() == 401
        || answer.header("location").endsWith("/sign-in")
        || answer.header("location").endsWith("/card");
  }

  // The front door leads whoever is in on to their work.
  private static boolean isIn(Wire wire, Guest guest) throws IOException {
    String home = "GET / HTTP/1.1\r\nHost: localhost\r\nCookie: SESSION=%s\r\n\r\n";
    var answer = wire.send(home.formatted(guest.cookie()).getBytes(ISO_8859_1), false);
    return answer.status() == 302;
  }

  private Answer sent(Wire wire, Request request) {
    try {
      var answer = wire.send(request.bytes(), request.method().equals("HEAD"));
      statuses.merge(String.valueOf(answer.status()), 1, Integer::sum);
      if (answer.status() >= 500) {
        wrong.add(answer.status() + " to " + request);
      } else if (INSIDE.matcher(answer.body()).find()) {
        wrong.add("its inside, to " + request + "\n" + answer.body());
      }
      return answer;
    } catch (IOException | RuntimeException failed) {
      wrong.add(failed + " to " + request);
      return new Answer(0, Map.of("connection", "close"), "");
    }
  }
}
