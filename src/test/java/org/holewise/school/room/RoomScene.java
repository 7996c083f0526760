package org.holewise.school.room;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.holewise.document.lines.BuildLines;
import org.holewise.school.account.Person;
import org.holewise.school.handin.Change;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.HandIn;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Request;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.Bench;
import org.holewise.school.session.Benches;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A class of the village theatre in a session, and what its benches do, in sentences. */
final class RoomScene {

  /** Those whose names are hard on a page come last. */
  static final List<String> NAMES =
      List.of(
          "Wren",
          "Sorrel",
          "Linden",
          "Alder",
          "Bryony",
          "Rowan",
          "Tansy",
          "Hazel",
          "Yarrow",
          "Juniper",
          "Clover",
          "Fern",
          "Heath",
          "Laurel",
          "Maple",
          "Moss",
          "Olive",
          "Perry",
          "Reed",
          "Robin",
          "Sage",
          "Teal",
          "Thorn",
          "Vale",
          "Willow",
          "Briar",
          "Basil",
          "Flax",
          "Marigold-Eglantine Featherstonebridge-Underwoodington",
          "Saffron");

  private static final String COLUMN_OFF = "D1 c16 c17";
  private static final String SOUND_LAMP = "D1 c15 c17";

  private final Parts parts;
  private final Person teacher;
  final ClassGroup group;
  final List<Person> students;
  final LibraryExercise entry;
  private final long session;

  /** The application's own parts. */
  interface Parts {
    <T> T part(Class<T> type);
  }

  /** Everybody of the class, and an open session of it. */
  RoomScene(Parts parts, Person teacher, ClassGroup group, long session) {
    this.parts = parts;
    this.teacher = teacher;
    this.group = group;
    this.session = session;
    students =
        parts.part(Classes.class).students(group).stream()
            .sorted(Comparator.comparing(Person::id))
            .toList();
    entry = entry(parts);
  }

  /** An open session of a new class with as many benches. */
  static RoomScene open(Parts parts, Person teacher, String name, int benches, boolean lookFirst) {
    var group = aClass(parts, name);
    var version = parts.part(ExerciseVersions.class).of(entry(parts));
    var today = LocalDate.now(parts.part(Clock.class));
    var plan = new Plan(group, version, today, benches, HintStep.PLACE, lookFirst);
    var sessions = parts.part(LabSessions.class);
    long session = sessions.plan(teacher, plan).id();
    sessions.open(teacher, session);
    return new RoomScene(parts, teacher, group, session);
  }

  /** A class of everybody. */
  static ClassGroup aClass(Parts parts, String name) {
    var classes = parts.part(Classes.class);
    var group = classes.add(name);
    NAMES.forEach(each -> classes.addStudent(group, each));
    return group;
  }

  private static LibraryExercise entry(Parts parts) {
    return parts.part(Library.class).find("stage-moonlight").orElseThrow();
  }

  private LabSessions sessions() {
    return parts.part(LabSessions.class);
  }

  LabSession session() {
    return sessions().find(session).orElseThrow();
  }

  Bench bench(int number) {
    return parts.part(Benches.class).of(session()).get(number - 1);
  }

  /** Two students of the class, the first for bench 1, sit down. */
  Bench sitDown(int number) {
    var benches = parts.part(Benches.class);
    benches.join(session(), number, students.get(2 * number - 2));
    benches.join(session(), number, students.get(2 * number - 1));
    return bench(number);
  }

  String soundLines() {
    return BuildLines.write(entry.checked(), entry.exercise()) + "\n";
  }

  /** The lamp is a column off, and the readings show that the loop is open. */
  String columnOffLines() {
    return soundLines()
        .replace(SOUND_LAMP, COLUMN_OFF)
        .replaceAll("(across-r1|across-moon|switch-open) .*", "$1 0.00 V")
        .replace("current 11.6 mA", "current 0.00 mA")
        .replace("moon lit", "moon dark");
  }

  /** The lamp is the wrong way round on the board, and right on the record. */
  String turnedLampLines() {
    return soundLines()
        .replaceAll("(across-r1|switch-open) .*", "$1 0.00 V")
        .replaceAll("across-moon .*", "across-moon 5.01 V")
        .replace("current 11.6 mA", "current 0.00 mA")
        .replace("moon lit", "moon dark");
  }

  /** A layout that no reading supports: it was entered wrongly. */
  String doubtfulLines() {
    return soundLines().replace(SOUND_LAMP, "D1 c15 c19");
  }

  HandIn handsIn(int number, String lines) {
    Bench bench = bench(number);
    Person by = bench.members().get(0);
    String key = "key " + bench.id() + " " + parts.part(HandIns.class).of(bench).size();
    var handIn =
        parts.part(HandIns.class).handIn(by, session(), bench, Request.of(key, lines), lines);
    parts.part(MarkingQueue.class).now(handIn);
    return handIn;
  }

  /** Enters lines of parts and readings into the draft. */
  void enters(int number, Map<String, String> texts) {
    Bench bench = bench(number);
    var changes = new ArrayList<Change>();
    texts.forEach((name, text) -> changes.add(new Change(name, text, 0)));
    parts.part(Drafts.class).save(bench.members().get(0), bench, changes);
  }

  void asksTheGate(int number, boolean go) {
    Bench bench = bench(number);
    var draft = Draft.of(parts.part(Drafts.class).of(bench), entry.exercise());
    parts.part(GateChecks.class).add(bench.members().get(0), bench, draft.layout(), go);
  }

  void asksForHelp(int number) {
    parts.part(HelpCalls.class).ask(bench(number).members().get(0), bench(number));
  }

  /** Everything that a bench did so far happened earlier by that much. */
  void longAgo(int number, Duration time) {
    var db = parts.part(JdbcClient.class);
    var then = OffsetDateTime.ofInstant(now().minus(time), ZoneOffset.UTC);
    long bench = bench(number).id();
    for (String update :
        List.of(
            "update draft_entries set written_at = ? where bench = ?",
            "update bench_members set joined_at = ? where bench = ?",
            "update gate_checks set asked_at = ? where bench = ?",
            "update help_calls set asked_at = ? where bench = ?",
            "update hand_ins set handed_at = ? where bench = ?")) {
      db.sql(update).params(then, bench).update();
    }
    db.sql("update lab_sessions set opened_at = ? where id = ? and opened_at > ?")
        .params(then, session, then)
        .update();
    sessions().changed(session);
  }

  private Instant now() {
    return parts.part(Clock.class).instant();
  }

  Person teacher() {
    return teacher;
  }

  /** Sixteen benches, at least one in every state that the room tells apart. */
  RoomScene inEveryState() {
    for (int number = 1; number <= 15; number++) {
      if (number != 13) {
        sitDown(number);
      }
    }
    var half = Map.of("part:P1", "+a3 -a3", "part:R1", "b10 b15", "reading:supply", "5.01 V");
    enters(2, half);
    asksTheGate(2, true);
    longAgo(2, Duration.ofMinutes(2));
    enters(3, half);
    longAgo(3, Duration.ofMinutes(23));
    enters(4, half);
    asksTheGate(4, false);
    longAgo(4, Duration.ofMinutes(4));
    for (int number : List.of(5, 9, 15)) {
      handsIn(number, soundLines());
    }
    for (int attempt = 0; attempt < 3; attempt++) {
      handsIn(6, columnOffLines());
    }
    longAgo(6, Duration.ofMinutes(11));
    handsIn(7, doubtfulLines());
    handsIn(8, columnOffLines());
    enters(10, half);
    asksForHelp(10);
    longAgo(10, Duration.ofMinutes(6));
    asksForHelp(11);
    longAgo(11, Duration.ofMinutes(75));
    enters(12, Map.of("part:R1", "b10"));
    handsIn(14, turnedLampLines());
    return this;
  }
}
