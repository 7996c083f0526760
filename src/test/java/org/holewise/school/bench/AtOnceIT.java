package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.holewise.running.LoggedErrors;
import org.holewise.running.Visitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whatever two tabs and a partner ask for at once, each is answered. */
class AtOnceIT extends AtBench {

  private static final int ROUNDS = 4;
  private static final int TABS = 6;

  private final LoggedErrors errors = new LoggedErrors();

  @BeforeEach
  void listen() {
    errors.listen();
  }

  @AfterEach
  void leave() {
    errors.leave();
  }

  @Test
  void opensAllTabsOfWhoHasJustComeIn() throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      var back = lesson.in(lesson.wren);
      var tabs = new ArrayList<Callable<HttpResponse<String>>>();
      for (int tab = 0; tab < TABS; tab++) {
        String at = tab % 2 == 0 ? path : "/today";
        tabs.add(() -> back.opens(at));
      }
      assertThat(all(tabs)).as(errors::said).containsOnly(200);
    }
  }

  @Test
  void saysOneTokenToAllTabsOfWhoHasJustComeIn() throws Exception {
    var back = lesson.in(lesson.wren);
    var tabs = new ArrayList<Callable<String>>();
    for (int tab = 0; tab < TABS; tab++) {
      tabs.add(() -> token(back));
    }
    String body = entry("part:R1", "\"b10 b14\"", "0");
    for (Future<String> token : atOnce(tabs)) {
      assertThat(json(back, token.get(), body).statusCode()).isEqualTo(200);
    }
  }

  @Test
  void answersWhatTwoStudentsInTwoTabsEachSend() throws Exception {
    lesson.at(1, lesson.sorrel);
    var sorrel = lesson.in(lesson.sorrel);
    String wrens = token(wren);
    String sorrels = token(sorrel);
    for (int round = 0; round < ROUNDS; round++) {
      var sent = new ArrayList<Callable<HttpResponse<String>>>();
      String fresh = "link:n" + round;
      for (int tab = 0; tab < 2; tab++) {
        sent.add(() -> json(wren, wrens, entry(fresh, "\"a1 b2\"", "0")));
        sent.add(() -> json(sorrel, sorrels, entry(fresh, "\"a1 b3\"", "0")));
        sent.addAll(form(wren, round));
        sent.addAll(form(sorrel, round));
      }
      assertThat(all(sent)).as(errors::said).allMatch(status -> status < 400 || status == 409);
    }
    assertThat(lesson.handIns(bench)).hasSizeGreaterThanOrEqualTo(2 * ROUNDS);
  }

  private List<Callable<HttpResponse<String>>> form(Visitor visitor, int round) {
    var form =
        BenchForm.on(visitor, path)
            .type("part:R1:1", "b" + (round + 1), "reading:supply", round + " V");
    var sent = new ArrayList<Callable<HttpResponse<String>>>();
    for (String act :
        List.of("/draft", "/gate", "/hand-ins", "/hand-ins", "/help", "/help/ended")) {
      sent.add(() -> form.sendTo(path + act));
    }
    for (String at : List.of("", "/entries", "/board")) {
      sent.add(() -> visitor.opens(path + at));
    }
    return sent;
  }

  private static List<Integer> all(List<Callable<HttpResponse<String>>> requests) throws Exception {
    var statuses = new ArrayList<Integer>();
    for (Future<HttpResponse<String>> answer : atOnce(requests)) {
      statuses.add(answer.get().statusCode());
    }
    return statuses;
  }

  private static <T> List<Future<T>> atOnce(List<Callable<T>> calls) throws Exception {
    var threads = Executors.newFixedThreadPool(calls.size());
    try {
      return threads.invokeAll(calls);
    } finally {
      threads.shutdownNow();
    }
  }
}
