package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Priors.Family;
import org.holewise.running.Office;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What holds of known causes, and of the tables learnt from them, on every kind of database. */
abstract class CausesContract {

  private static final int AT_ONCE = 8;

  private final Office office;
  private final LabScene scene;
  private final MarkingQueue queue;
  private final Confirmations confirmations;
  private final SchoolPriors priors;

  CausesContract(Store store) {
    office = new Office(store, MarkingQueue.class, HandInContract.libraryType());
    scene = new LabScene(office);
    queue = office.part(MarkingQueue.class);
    confirmations = office.part(Confirmations.class);
    priors = office.part(SchoolPriors.class);
  }

  @AfterEach
  void close() {
    office.close();
  }

  /** The lamp a column off, as it then measures. */
  private String columnOff() {
    return scene
        .soundLines()
        .replace("D1 c15 c17", "D1 c16 c17")
        .replaceAll("(across-r1|across-moon|switch-open) .*", "$1 0.00 V")
        .replaceAll("current .*", "current 0.00 mA")
        .replace("moon lit", "moon dark");
  }

  /** A lead that does not touch: the layout is right. */
  private String loose() {
    return columnOff().replace("D1 c16 c17", "D1 c15 c17");
  }

  private HandIn keeps(String key, String lines) {
    return office
        .part(HandIns.class)
        .handIn(scene.wren, scene.session(), scene.bench(), Request.of(key, lines), lines);
  }

  private HandIn handsIn(String key, String lines) {
    var kept = keeps(key, lines);
    queue.now(kept);
    return kept;
  }

  private boolean confirms(HandIn handIn, String kind, String place) {
    return confirmations.add(scene.teacher, scene.session(), handIn, kind, place, "");
  }

  private String kind(HandIn handIn) {
    return confirmations.of(handIn).map(Confirmation::kind).orElse("");
  }

  @Test
  void ofATeacherChangeTheTableOfTheNextMark() {
    var first = handsIn("a", loose());
    assertThat(priorsOf(first)).isEqualTo("start");
    confirms(first, "open-contact", "R1.1");
    var second = handsIn("b", loose());
    assertThat(priorsOf(first)).isEqualTo("start");
    assertThat(priorsOf(second)).isEqualTo("school-1");
    assertThat(priors.now().ofFaults(Family.LEAD_CONTACT))
        .isGreaterThan(Priors.start().ofFaults(Family.LEAD_CONTACT));
  }

  @Test
  void makeTablesThatStayWhatTheirNamesSay() {
    var first = handsIn("a", loose());
    var second = handsIn("b", loose());
    confirms(first, "open-contact", "R1.1");
    Priors one = priors.now();
    confirms(second, "open-contact", "link 1");
    Priors two = priors.now();
    confirms(first, "touching", "e5 f9");
    Priors three = priors.now();
    confirms(second, "none", "");
    assertThat(List.of(one.name(), two.name(), three.name()))
        .containsExactly("school-1", "school-2", "school-3");
    assertThat(priors.named("school-1")).isEqualTo(one);
    assertThat(priors.named("school-2")).isEqualTo(two);
    assertThat(priors.named("school-3")).isEqualTo(three);
    assertThat(priors.named("start")).isEqualTo(Priors.start());
    assertThat(two.ofFaults(Family.LINK_CONTACT)).isGreaterThan(one.ofFaults(Family.LINK_CONTACT));
    assertThat(three.ofFaults(Family.LEAD_CONTACT)).isLessThan(two.ofFaults(Family.LEAD_CONTACT));
    for (String none : List.of("school-5", "school-0", "school--1", "school-01", "table", "")) {
      assertThatThrownBy(() -> priors.named(none)).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void countOnceAHandInTheLatestOfATeacher() {
    var handIn = handsIn("a", loose());
    assertThat(confirms(handIn, "open-contact", "R1.1")).isTrue();
    assertThat(confirms(handIn, "open-contact", "R1.1")).isFalse();
    assertThat(confirms(handIn, "touching", "e5 f9")).isTrue();
    assertThat(kind(handIn)).isEqualTo("touching");
    assertThat(numbers()).containsExactly(1L, 2L);
    assertThat(priors.now()).isEqualTo(Priors.learnt("school-2", Map.of(Family.TOUCHING, 1), 0));
  }

  @Test
  void areProvenByARepairOnceAndTheSoundHandInWithIt() {
    var before = handsIn("a", columnOff());
    assertThat(confirmations.of(before)).isEmpty();
    var after = handsIn("b", scene.soundLines());
    var proven = confirmations.of(before).orElseThrow();
    assertThat(proven.by()).isEmpty();
    assertThat(proven.kind()).isEqualTo("column-off");
    assertThat(proven.place()).isEqualTo("D1.a");
    assertThat(kind(after)).isEqualTo("none");
    office
        .part(Answers.class)
        .give(scene.wren, scene.session(), after, "x", "volts R1.1 P1.- 5.01 V");
    queue.now(after);
    assertThat(numbers()).containsExactly(1L, 2L);
    assertThat(priors.now()).isEqualTo(Priors.learnt("school-2", Map.of(), 2));
  }

  @Test
  void areProvenWhicheverHandInIsMarkedFirst() {
    var before = keeps("a", columnOff());
    var after = handsIn("b", scene.soundLines());
    assertThat(confirmations.of(before)).isEmpty();
    assertThat(confirmations.of(after)).isEmpty();
    queue.now(before);
    assertThat(kind(before)).isEqualTo("column-off");
    assertThat(kind(after)).isEqualTo("none");
  }

  @Test
  void areNotProvenWhereNothingSaysWhatWasMended() {
    var before = handsIn("a", loose());
    var after = handsIn("b", scene.soundLines());
    assertThat(confirmations.of(before)).isEmpty();
    assertThat(confirmations.of(after)).isEmpty();
    confirms(before, "open-contact", "R1.1");
    assertThat(kind(after)).isEqualTo("none");
    assertThat(priors.now())
        .isEqualTo(Priors.learnt("school-2", Map.of(Family.LEAD_CONTACT, 1), 1));
  }

  @Test
  void ofATeacherStandAboveWhatARepairProvedWheneverTheyCame() {
    var before = handsIn("a", columnOff());
    confirms(before, "touching", "e5 f9");
    var after = handsIn("b", scene.soundLines());
    assertThat(kind(before)).isEqualTo("touching");
    confirms(after, "poor-contact", "R1.1");
    assertThat(kind(after)).isEqualTo("poor-contact");
    assertThat(priors.now())
        .isEqualTo(
            Priors.learnt("school-3", Map.of(Family.TOUCHING, 1, Family.LEAD_CONTACT, 1), 0));
  }

  @Test
  void sayWhatTheMarkHadSaidByThen() {
    var handIn = handsIn("a", columnOff());
    confirms(handIn, "wrong-strip", "D1.a");
    var row =
        office
            .part(JdbcClient.class)
            .sql("select pointed, said, was_so from causes")
            .query()
            .singleRow();
    assertThat((Integer) row.get("pointed")).isBetween(1, 8);
    assertThat((Double) row.get("said")).isBetween(0.0, 1.0);
    assertThat(row.get("was_so")).isInstanceOf(Boolean.class);
  }

  @Test
  void areNumberedWithoutGapsHoweverManyComeAtOnce()
      throws InterruptedException, ExecutionException {
    var handIn = handsIn("a", loose());
    var teacher = office.part(People.class).addWithoutPassword("Ada Fennimore", Role.TEACHER);
    List<Callable<Boolean>> all =
        IntStream.range(0, AT_ONCE)
            .<Callable<Boolean>>mapToObj(
                i ->
                    () ->
                        confirmations.add(
                            teacher, scene.session(), handIn, "open-contact", "R1.1", "say " + i))
            .toList();
    var threads = Executors.newFixedThreadPool(AT_ONCE);
    try {
      for (Future<Boolean> each : threads.invokeAll(all)) {
        assertThat(each.get()).isTrue();
      }
    } finally {
      threads.shutdown();
    }
    assertThat(numbers())
        .containsExactlyElementsOf(LongStream.rangeClosed(1, AT_ONCE).boxed().toList());
  }

  private String priorsOf(HandIn handIn) {
    return office.part(Marks.class).latest(handIn).orElseThrow().priors();
  }

  private List<Long> numbers() {
    return office
        .part(JdbcClient.class)
        .sql("select number from causes order by number")
        .query(Long.class)
        .list();
  }
}
