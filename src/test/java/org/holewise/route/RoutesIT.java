package org.holewise.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.holewise.route.Table.Row;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Every route, for everybody who may come to it, in the order of the table. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RoutesIT {

  private static RunningSchool school;
  private static Cast cast;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
    cast = new Cast(school);
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @Test
  @Order(1)
  void haveARowEachAndEachRowARoute() {
    var routes = Route.of(school);
    assertThat(routes).hasSizeGreaterThan(WhoMayWhat.FILTERS.size());
    assertThat(WhoMayWhat.TABLE.rows().stream().map(Row::route).sorted().toList())
        .isEqualTo(WhoMayWhat.with(routes));
  }

  @Test
  @Order(2)
  void thatOnlyShowAnswerAsTheTableSaysAndChangeNothing() {
    var before = snapshot();
    assertThat(before.rows()).isNotEmpty();
    var soft = new SoftAssertions();
    for (Row row : rows(true)) {
      for (Somebody who : Somebody.values()) {
        var shown = sent(row, who, "GET");
        soft.assertThat(answer(shown)).as("%s for %s", row.route(), who).isEqualTo(row.to(who));
        var head = sent(row, who, "HEAD");
        soft.assertThat(answer(head)).as("HEAD %s for %s", row.route(), who).isEqualTo(row.to(who));
        soft.assertThat(head.body()).isEmpty();
        soft.assertThat(sent(row, who, "OPTIONS").statusCode())
            .as("OPTIONS %s for %s", row.route(), who)
            .isIn(200, 302, 401, 403, 404, 405);
      }
    }
    soft.assertAll();
    assertThat(snapshot()).isEqualTo(before);
  }

  @Test
  @Order(3)
  void thatChangeTakeNothingWithoutTheVisitorsOwnToken() {
    var before = snapshot();
    var soft = new SoftAssertions();
    for (Row row : rows(false)) {
      for (Somebody who : Somebody.values()) {
        for (String token : List.of("", cast.token(cast.other(who)))) {
          var answer = changed(row, who, token);
          soft.assertThat(answer.statusCode())
              .as("%s for %s with the token '%s'", row.route(), who, token)
              .isEqualTo(row.route().isForPrograms() ? 401 : 403);
        }
      }
    }
    soft.assertAll();
    assertThat(snapshot()).isEqualTo(before);
  }

  @Test
  @Order(4)
  void thatChangeAnswerAsTheTableSays() {
    var soft = new SoftAssertions();
    for (Row row : rows(false)) {
      for (Somebody who : Somebody.values()) {
        var answer = changed(row, who, cast.token(who));
        soft.assertThat(answer(answer)).as("%s for %s", row.route(), who).isEqualTo(row.to(who));
      }
    }
    soft.assertAll();
  }

  private static List<Row> rows(boolean shows) {
    return WhoMayWhat.TABLE.rows().stream().filter(row -> row.route().isGet() == shows).toList();
  }

  private static Snapshot snapshot() {
    return Snapshot.of(school.part(JdbcClient.class));
  }

  private static HttpResponse<String> sent(Row row, Somebody who, String method) {
    return cast.visitor(who).send(request(row).method(method, BodyPublishers.noBody()).build());
  }

  private static HttpResponse<String> changed(Row row, Somebody who, String token) {
    String body = cast.filled(row.body());
    boolean json = body.startsWith("{");
    return cast.visitor(who)
        .send(
            request(row)
                .header(
                    "Content-Type", json ? "application/json" : "application/x-www-form-urlencoded")
                .header("X-CSRF-TOKEN", token)
                .method(row.route().method(), BodyPublishers.ofString(body))
                .build());
  }

  private static HttpRequest.Builder request(Row row) {
    return HttpRequest.newBuilder(school.at(cast.path(row.route())))
        .header("Accept", "text/html, */*;q=0.1");
  }

  private static String answer(HttpResponse<String> answer) {
    String target = Visitor.target(answer);
    boolean door = target.equals("/sign-in") || target.equals("/card");
    return answer.statusCode() == 302 && door ? "door" : String.valueOf(answer.statusCode());
  }
}
