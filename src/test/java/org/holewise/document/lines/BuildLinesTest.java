package org.holewise.document.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.holewise.document.picture.LampBench.EXERCISE;
import static org.holewise.document.picture.LampBench.at;
import static org.holewise.document.picture.LampBench.hole;
import static org.holewise.document.picture.LampBench.link;
import static org.holewise.document.picture.LampBench.placed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.document.picture.LampBench;
import org.holewise.document.text.Messages;
import org.holewise.engine.board.BoardModels;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Placed;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.part.Pin;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class BuildLinesTest {

  private static final String LAMP =
      """
      B1 +j2 -a2
      S1 +j6 j8
      R1 f8 f12
      D1 g12 g14
      link f14 e14
      link a14 -a14
      """;

  private static Sheet read(String text) {
    return BuildLines.read(text, EXERCISE);
  }

  private static Build build(String text) {
    return read(text).record().build().orElseThrow();
  }

  @Nested
  class Reading {

    @Test
    void placesPartsAndLinksInTheOrderOfTheirPins() {
      Sheet sheet = read(LAMP);
      assertThat(sheet.sound()).isTrue();
      assertThat(sheet.record().build()).contains(LampBench.lamp());
    }

    @Test
    void takesHolesByThePinsNamesInAnyOrder() {
      assertThat(build("D1 k=g14 a=g12").placed())
          .containsExactly(placed("D1", "a", "g12", "k", "g14"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "R1 f8 f12",
          "  r1   F8,  12f ",
          "R1: f-8 f12",
          "R1\tf8 f12 # from the left",
          "R1 1=f8 2=f12",
          "R1 1 = f8, 2 = f12"
        })
    void doesNotMindCapitalsAndSpacing(String line) {
      assertThat(build(line).placed()).containsExactly(placed("R1", "1", "f8", "2", "f12"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"link f14 e14", "LINK f14 to e14", "link f14, e14", "link f14 -> e14"})
    void readsALinkHoweverItsEndsAreJoined(String line) {
      assertThat(build(line).links()).containsExactly(link("f14", "e14"));
    }

    @Test
    void keepsWhatWasReadOffAMeterAsItWasTyped() {
      var record = read("lamp-volts 2.04 V\nLoop: 9,9 mA\nglow=lit").record();
      assertThat(record.readings())
          .containsExactly(
              Map.entry("lamp-volts", Written.text("2.04 V")),
              Map.entry("loop", Written.text("9,9 mA")),
              Map.entry("glow", Written.text("lit")));
      assertThat(record.build()).isEmpty();
    }

    @Test
    void readsAReadingThatWasAskedFor() {
      var extra = read("extra volts R1.2 f13 0.4 V\nextra seen d1 dim when DARK").record().extra();
      assertThat(extra)
          .containsExactly(
              new Extra(
                  "x1",
                  new Measure.Volts(at("R1", "2"), Probe.at(hole("f13"))),
                  "lit",
                  Written.text("0.4 V")),
              new Extra("x2", new Measure.Seen("D1"), "dark", Written.text("dim")));
    }

    @Test
    void takesANameAloneForAnEntryNotYetFilledIn() {
      Sheet sheet = read("R1\nsupply \nlink\nextra\n\n# a note");
      assertThat(sheet.sound()).isTrue();
      assertThat(sheet.record().build()).isEmpty();
      assertThat(sheet.record().readings()).isEmpty();
    }

    @Test
    void readsWhatIsPrintedOnAPart() {
      assertThat(build("R1 f8 f12 marked 390R 5%").placed().get(0).marked()).contains("390R 5%");
    }

    @Test
    void takesAnotherBoardAndMeterThanTheExercises() {
      var record = read("board 400\nmeter hand-2000\nR1 f8 f12").record();
      assertThat(record.build().orElseThrow().board().name()).isEqualTo("400");
    }

    @Test
    void remembersOnWhichLineEachEntryWasTyped() {
      Sheet sheet = read("# note\nR1 f8 f12\nR9 a1 a2\nlink f14 e14\nD1 g12 g14\nsupply 6 V");
      assertThat(sheet.lineOf("/build/placed/1/holes/k")).hasValue(5);
      assertThat(sheet.lineOf("/build/links/0")).hasValue(4);
      assertThat(sheet.lineOf("/build/readings/supply")).hasValue(6);
      assertThat(sheet.lineOf("/build/placed/7")).isEmpty();
    }
  }

  @Nested
  class WrongLines {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            R9 f8 f12                | unknown-name     | R9
            lamp-vots 2 V            | unknown-name     | lamp-vots
            R1 f8                    | lead-count       | R1
            R1 f8 f12 f14            | lead-count       | R1
            R1 f8 z99                | no-hole          | z99
            R1 f0 f12                | no-hole          | f0
            D1 a=g12 g14             | mixed-holes      | D1
            D1 anode=g12 k=g14       | no-pin           | D1
            D1 a=g12 A=g14           | pin-twice        | D1
            link f14                 | link-ends        | 1
            link f14 k14             | no-hole          | k14
            board 9000               | unknown-board    | 9000
            meter mine               | unknown-meter    | mine
            extra watts R1.1 2 W     | extra-kind       | volts
            extra volts R1.1         | extra-points     | volts
            extra volts R1.3 f9 1 V  | no-point         | R1.3
            extra amps f9 1 mA       | no-lead          | f9
            extra seen D7 lit        | no-part          | D7
            extra seen D1 lit when x | unknown-condition | x
            """)
    void sayWhatIsWrongBesideTheLine(String line, String kind, String names) {
      Line.Problem problem = read(line).lines().get(0).problem().orElseThrow();
      assertThat(problem.kind()).isEqualTo(kind);
      assertThat(problem.parts()).anyMatch(part -> part.contains(names));
      assertThat(problem.text(Messages.english())).contains(names);
    }

    @Test
    void nameWhatTheExerciseHas() {
      var problem = read("R3 f8 f12").lines().get(0).problem().orElseThrow();
      assertThat(problem.text(Messages.english()))
          .startsWith("There is no R3 here; this exercise has B1, S1, R1, D1");
    }

    @Test
    void areKeptAndTheOthersAreUsed() {
      Sheet sheet = read("R1 f8 f12\nR9 a1 a2\nD1 g12 g14");
      assertThat(sheet.lines()).extracting(Line::text).contains("R9 a1 a2");
      assertThat(sheet.lines())
          .extracting(line -> line.problem().isPresent())
          .containsExactly(false, true, false);
      assertThat(sheet.record().build().orElseThrow().placed())
          .extracting(Placed::ref)
          .containsExactly("R1", "D1");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"R1 f8 f12\nr1 a8 a12", "supply 6 V\nsupply 5 V", "board 400\nboard 830"})
    void areThoseThatSayAThingASecondTime(String text) {
      Sheet sheet = read(text);
      assertThat(sheet.lines().get(0).problem()).isEmpty();
      assertThat(sheet.lines().get(1).problem().orElseThrow().kind()).isEqualTo("said-twice");
    }

    @Test
    void areThoseThatAreFarTooLong() {
      var problem = read("supply " + "9".repeat(300)).lines().get(0).problem().orElseThrow();
      assertThat(problem.kind()).isEqualTo("too-long");
    }
  }

  @Nested
  class Printing {

    @Test
    void printsWhatATeacherWouldType() {
      var record =
          new BenchRecord(
              "bench-lamp", "hand-2000", Optional.of(LampBench.lamp()), Map.of(), List.of());
      assertThat(BuildLines.write(record, EXERCISE)).isEqualTo(LAMP);
    }

    @Test
    void printsLinesThatReadAsTheSameRecord() {
      var readings = new LinkedHashMap<String, Written>();
      readings.put("supply", Written.text("5.97 V"));
      readings.put("loop", Written.text("OL"));
      var build =
          new Build(
              BoardModels.named("830").orElseThrow(),
              List.of(
                  placed("Q1", "e", "2:d8", "b", "d7", "c", "d6"),
                  placed("D1", "k", "+a14"),
                  new Placed(
                      "R1",
                      Map.of("1", hole("f8"), "2", hole("f9")),
                      Optional.empty(),
                      Optional.of("390R"))),
              List.of(link("f14", "e14")));
      var record =
          new BenchRecord(
              "bench-lamp",
              "hand-2000",
              Optional.of(build),
              readings,
              List.of(
                  new Extra(
                      "x1", new Measure.Amps(new Pin("R1", "2")), "dark", Written.text("9 mA")),
                  new Extra(
                      "again",
                      new Measure.Joined(at("R1", "1"), Probe.at(hole("-j3"))),
                      "lit",
                      Written.text("yes")),
                  new Extra(
                      "x3",
                      new Measure.Ohms(at("R1", "1"), at("R1", "2"), true),
                      "lit",
                      Written.text("389 ohm"))));
      Sheet sheet = read(BuildLines.write(record, EXERCISE));
      assertThat(sheet.sound()).isTrue();
      assertThat(sheet.record()).isEqualTo(record);
    }

    @Test
    void givesAPlainNumberItsUnit() {
      var record =
          new BenchRecord(
              "bench-lamp",
              "hand-2000",
              Optional.empty(),
              Map.of("loop", Written.number(0.0099)),
              List.of());
      assertThat(BuildLines.write(record, EXERCISE)).isEqualTo("loop 0.0099 A\n");
    }
  }
}
