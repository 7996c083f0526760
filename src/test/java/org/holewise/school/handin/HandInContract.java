package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.holewise.running.Office;
import org.holewise.school.library.Library;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSessions;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What holds of hand-ins, answers and their marks on every kind of database. */
abstract class HandInContract {

  private static final int TWINS = 8;

  private final Office office;
  private final LabScene scene;
  private final HandIns handIns;
  private final Marks marks;
  private final MarkingQueue queue;

  HandInContract(Store store) {
    office = new Office(store, MarkingQueue.class, libraryType());
    scene = new LabScene(office);
    handIns = office.part(HandIns.class);
    marks = office.part(Marks.class);
    queue = office.part(MarkingQueue.class);
  }

  static Class<?> libraryType() {
    try {
      return Class.forName("org.holewise.school.library.ShippedExercises")
          .asSubclass(Library.class);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  @AfterEach
  void close() {
    office.close();
  }

  private HandIn handIn(String key, String lines) {
    return handIns.handIn(
        scene.wren, scene.session(), scene.bench(), Request.of(key, lines), lines);
  }

  @Test
  void belongToTheBenchWithItsMembersOfThatMoment() {
    var first = handIn("a", scene.soundLines());
    office.part(Benches.class).move(scene.teacher, scene.session(), scene.sorrel, 2);
    var second = handIn("b", scene.soundLines());
    assertThat(first.members()).containsExactly(scene.sorrel, scene.wren);
    assertThat(second.members()).containsExactly(scene.wren);
    assertThat(handIns.of(scene.bench())).extracting(HandIn::number).containsExactly(1, 2);
    assertThat(handIns.find(scene.bench(), 1)).contains(first);
  }

  @Test
  void areKeptBeforeTheyAreMarkedAndMarkedOnce() {
    var kept = handIn("a", scene.soundLines());
    assertThat(marks.latest(kept)).isEmpty();
    queue.now(kept);
    queue.waiting();
    var mark = marks.latest(kept).orElseThrow();
    assertThat(mark.points().total()).isEqualTo(mark.points().of()).isPositive();
    assertThat(mark.document()).contains("\"verdict\":\"within\"");
    assertThat(rows("marks")).isOne();
    assertThat(rows("marking_jobs")).isZero();
  }

  @Test
  void areMarkedLaterWhereNobodyMarkedThemAtOnce() {
    var kept = handIn("a", scene.soundLines());
    queue.waiting();
    assertThat(marks.latest(kept)).isPresent();
  }

  @Test
  void areOneHoweverOftenTheyAreSentAtOnce() throws InterruptedException, ExecutionException {
    var sent = together(() -> handIn("a", scene.soundLines()));
    assertThat(sent).hasSize(TWINS);
    for (Future<HandIn> each : sent) {
      assertThat(each.get().number()).isOne();
    }
    assertThat(rows("hand_ins")).isOne();
    assertThat(rows("hand_in_members")).isEqualTo(2);
  }

  @Test
  void refuseAnotherContentUnderTheSameKey() {
    handIn("a", scene.soundLines());
    assertThatThrownBy(() -> handIn("a", "R1 b10 b15\n")).isInstanceOf(KeyTaken.class);
    assertThat(rows("hand_ins")).isOne();
  }

  @Test
  void areRefusedOnceTheSessionIsClosedUnlessTheyWereIn() {
    var kept = handIn("a", scene.soundLines());
    office.part(LabSessions.class).close(scene.teacher, scene.session().id());
    assertThat(handIn("a", scene.soundLines())).isEqualTo(kept);
    assertThatThrownBy(() -> handIn("b", scene.soundLines())).isInstanceOf(SessionClosed.class);
  }

  @Test
  void areMarkedAgainWithEachAnswerAndLoseNothingByIt() {
    var kept = handIn("a", scene.soundLines().replace("R1 b10 b14", "R1 b10 b15"));
    queue.now(kept);
    var before = marks.latest(kept).orElseThrow();
    var answers = office.part(Answers.class);
    for (String key : List.of("x", "x", "y")) {
      answers.give(
          scene.wren, scene.session(), kept, key, "volts R1.1 P1.- 5.0" + key.length() + " V");
    }
    queue.now(kept);
    var after = marks.latest(kept).orElseThrow();
    assertThat(before.answers()).isZero();
    assertThat(after.answers()).isEqualTo(2);
    assertThat(after.points()).isEqualTo(before.points());
    assertThat(after.document()).isNotEqualTo(before.document());
    assertThat(rows("marks")).isEqualTo(3);
    assertThatThrownBy(
            () -> answers.give(scene.wren, scene.session(), kept, "x", "volts R1.1 P1.- 9 V"))
        .isInstanceOf(KeyTaken.class);
  }

  @Test
  void changeWhatTheRoomShows() {
    long before = scene.session().changes();
    handIn("a", scene.soundLines());
    assertThat(scene.session().changes()).isGreaterThan(before);
  }

  private <T> List<Future<T>> together(Callable<T> act) throws InterruptedException {
    var threads = Executors.newFixedThreadPool(TWINS);
    try {
      return threads.invokeAll(IntStream.range(0, TWINS).mapToObj(i -> act).toList());
    } finally {
      threads.shutdown();
    }
  }

  private int rows(String table) {
    return office
        .part(JdbcClient.class)
        .sql("select count(*) from " + table)
        .query(Integer.class)
        .single();
  }
}
