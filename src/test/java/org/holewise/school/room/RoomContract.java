package org.holewise.school.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.holewise.running.Office;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Fault;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.Looks;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Overrulings;
import org.holewise.school.handin.Power;
import org.holewise.school.library.Library;
import org.holewise.school.room.BenchProgress.Filled;
import org.holewise.school.room.Need.Kind;
import org.holewise.school.session.Benches;
import org.holewise.school.session.LabSession;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the room reads of its benches on every kind of database. */
abstract class RoomContract {

  private final Office office;
  private final Person teacher;
  private final RoomScene scene;
  private final Room room;

  RoomContract(Store store) {
    office = new Office(store, MarkingQueue.class, libraryType());
    teacher = office.part(People.class).addWithoutPassword("Orla Fennimore", Role.TEACHER);
    scene = RoomScene.open(office::part, teacher, "9 Lanterns", 16, true);
    room = office.part(Room.class);
  }

  private static Class<?> libraryType() {
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

  @Test
  void everyStateIsToldApart() {
    scene.inEveryState();
    assertThat(needs())
        .containsEntry(1, List.of(Kind.AT_WORK))
        .containsEntry(2, List.of(Kind.LOOK_FIRST))
        .containsEntry(3, List.of(Kind.STUCK))
        .containsEntry(4, List.of(Kind.STOPPED))
        .containsEntry(5, List.of(Kind.FINISHED))
        .containsEntry(6, List.of(Kind.SAME_FAULT, Kind.STUCK))
        .containsEntry(7, List.of(Kind.HELD))
        .containsEntry(8, List.of(Kind.AT_WORK))
        .containsEntry(10, List.of(Kind.HELP))
        .containsEntry(11, List.of(Kind.HELP, Kind.STUCK))
        .containsEntry(13, List.of(Kind.EMPTY))
        .containsEntry(16, List.of(Kind.EMPTY))
        .hasSize(16);
  }

  @Test
  void partsCountOnceTheyHaveAllTheirHoles() {
    scene.sitDown(1);
    scene.enters(
        1,
        Map.of("part:R1", "1=b10", "part:D1", "c15 c17 marked blue", "reading:supply", "5.01 V"));
    assertThat(bench(1).filled()).isEqualTo(new Filled(1, 4, 1, 6));
    scene.enters(1, Map.of("part:R1", "1=b10 2=b15", "reading:supply", ""));
    assertThat(bench(1).filled()).isEqualTo(new Filled(2, 4, 0, 6));
  }

  @Test
  void handInsCarryTheirMarksFaultAndTheTeachersLastWord() {
    scene.sitDown(1);
    scene.handsIn(1, scene.columnOffLines());
    HandIn second = scene.handsIn(1, scene.columnOffLines());
    var overrulings = office.part(Overrulings.class);
    long before = scene.session().changes();
    overrulings.add(teacher, second, 58, 40, "Explained it well.");
    overrulings.add(teacher, second, 60, 39, "Explained it better.");
    assertThat(scene.session().changes()).isEqualTo(before + 2);
    var attempts = bench(1).attempts();
    assertThat(attempts).extracting(Attempt::number).containsExactly(1, 2);
    assertThat(attempts.get(0).fault()).contains(new Fault("column-off", "R1.2"));
    assertThat(attempts.get(0).result().orElseThrow().total()).isEqualTo(93);
    var last = attempts.get(1).result().orElseThrow();
    assertThat(last.own()).contains(new Result.Own(60, 39, "Explained it better."));
    assertThat(last.total()).isEqualTo(99);
    assertThat(last.points().total()).isEqualTo(93);
  }

  @Test
  void suspectsAreFaultsWhereTheWiringFits() {
    scene.sitDown(1);
    scene.handsIn(1, scene.turnedLampLines());
    scene.sitDown(2);
    scene.handsIn(2, scene.soundLines());
    assertThat(bench(1).last().flatMap(Attempt::fault)).contains(new Fault("reversed", "D1"));
    assertThat(bench(2).last().flatMap(Attempt::fault)).isEmpty();
  }

  @Test
  void theClassTripsOverWhatLatestHandInsPointToFirst() {
    scene.inEveryState();
    assertThat(Stumble.of(room.of(scene.session())))
        .containsExactly(
            new Stumble("column-off", List.of(6, 8)),
            new Stumble("layout-doubtful", List.of(7)),
            new Stumble("reversed", List.of(14)));
  }

  @Test
  void aLookOpensTheGateAndAnswersWhatLookingCan() {
    scene.inEveryState();
    office.clock().forward(Duration.ofMinutes(1));
    var looks = office.part(Looks.class);
    for (int number : List.of(2, 3, 4, 6)) {
      looks.add(teacher, scene.bench(number), "");
    }
    office.part(HelpCalls.class).end(scene.bench(10));
    assertThat(bench(2).power()).isEqualTo(Power.ON);
    assertThat(needs())
        .containsEntry(2, List.of(Kind.AT_WORK))
        .containsEntry(3, List.of(Kind.AT_WORK))
        .containsEntry(4, List.of(Kind.AT_WORK))
        .containsEntry(6, List.of(Kind.AT_WORK))
        .containsEntry(10, List.of(Kind.AT_WORK));
  }

  @Test
  void aBenchIsOfItsOwnSessionAlone() {
    scene.inEveryState();
    var other = RoomScene.open(office::part, teacher, "8 Lanterns", 2, false);
    assertThat(room.of(other.session())).hasSize(2).allMatch(BenchProgress::isEmpty);
    assertThat(office.part(Attempts.class).of(other.session())).isEmpty();
  }

  @Test
  void studentsStandByTheLastHandInTheyTookPartIn() {
    scene.sitDown(1);
    scene.sitDown(2);
    scene.handsIn(1, scene.columnOffLines());
    office.clock().forward(Duration.ofMinutes(1));
    Person moved = scene.students.get(1);
    office.part(Benches.class).move(teacher, scene.session(), moved, 2);
    scene.handsIn(2, scene.soundLines());
    var standings = standings(scene.session());
    assertThat(standings).hasSize(RoomScene.NAMES.size());
    assertThat(standings.get("Wren").bench()).contains(1);
    assertThat(standings.get("Wren").attempts()).hasSize(1);
    assertThat(standings.get(moved.name()).bench()).contains(2);
    assertThat(standings.get(moved.name()).attempts()).hasSize(2);
    assertThat(standings.get("Briar").bench()).isEmpty();
    assertThat(standings.get("Briar").last()).isEmpty();
  }

  @Test
  void whoIsTakenFromTheBenchesSitsNowhere() {
    scene.sitDown(1);
    var benches = office.part(Benches.class);
    Person wren = scene.students.get(0);
    assertThat(benches.unseat(teacher, scene.session(), wren)).isTrue();
    assertThat(benches.unseat(teacher, scene.session(), wren)).isFalse();
    assertThat(scene.bench(1).members()).containsExactly(scene.students.get(1));
  }

  private Map<String, Standing> standings(LabSession session) {
    return Standing.of(
            scene.students,
            office.part(Benches.class).of(session),
            office.part(Attempts.class).byMember(session))
        .stream()
        .collect(Collectors.toMap(standing -> standing.student().name(), one -> one));
  }

  private BenchProgress bench(int number) {
    return room.of(scene.session()).get(number - 1);
  }

  private Map<Integer, List<Kind>> needs() {
    return room.of(scene.session()).stream()
        .collect(
            Collectors.toMap(
                bench -> bench.bench().number(),
                bench ->
                    Need.of(bench, true, office.clock().instant()).reasons().stream()
                        .map(Need.Reason::kind)
                        .toList()));
  }
}
