package org.holewise.school.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Path;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Readings of what swings, marked over the wire, against the closed forms of filters. */
class AlternatingMarksIT {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** A twentieth of a decibel, as a voltage's share. */
  private static final double TWENTIETH = Math.pow(10, 0.05 / 20) - 1;

  /** First order: 1k and 100 nF, 1591.5 Hz; readings at the corner and a decade above. */
  private static final String LOW_PASS =
      """
      {"exercise": {
         "slug": "hum", "board": "400",
         "parts": [
           {"ref": "G1", "kind": "generator", "volts": 1, "hertz": 1000, "output": 0},
           {"ref": "R1", "kind": "resistor", "ohms": "1k", "tolerance": "1 %"},
           {"ref": "C1", "kind": "capacitor", "farads": "100 nF"}],
         "nets": {"in": ["G1.+", "R1.1"], "out": ["R1.2", "C1.1"], "ground": ["C1.2", "G1.-"]},
         "readings": [
           {"id": "own", "acvolts": ["C1.1", "C1.2"]},
           {"id": "rms", "acvolts": ["C1.1", "C1.2"], "hertz": "1.5915 kHz"},
           {"id": "peak", "peak": ["C1.1", "C1.2"], "hertz": "1.5915 kHz"},
           {"id": "above", "ratio": {"of": ["C1.1", "C1.2"], "to": ["G1.+", "G1.-"], "in": "dB"},
            "hertz": "15.915 kHz"},
           {"id": "corner", "corner": {"of": ["C1.1", "C1.2"], "to": ["G1.+", "G1.-"]}}]},
       "build": {
         "placed": [
           {"ref": "G1", "holes": {"+": "a3", "-": "a11"}},
           {"ref": "R1", "holes": {"1": "b3", "2": "b7"}},
           {"ref": "C1", "holes": {"1": "c7", "2": "c11"}}],
         "links": [],
         "readings": {"own": "0.599 V", "rms": "0.500 V", "peak": "1.41 V", "above": "-20.0 dB",
                      "corner": "1.59 kHz"}}}
      """;

  /** Franco 3e, 3.11: unity gain, 11.25k twice, 2 nF and 1 nF: Butterworth, 10.0 kHz. */
  private static final String SALLEN_KEY =
      """
      {"exercise": {
         "slug": "voices", "board": "830-split",
         "parts": [
           {"ref": "P1", "kind": "supply", "outputs": [
             {"plus": "+", "minus": "0", "volts": 9, "limit": "100 mA"},
             {"plus": "0", "minus": "-", "volts": 9, "limit": "100 mA"}]},
           {"ref": "G1", "kind": "generator", "volts": 1, "hertz": 100},
           {"ref": "R1", "kind": "resistor", "ohms": 11250},
           {"ref": "R2", "kind": "resistor", "ohms": 11250},
           {"ref": "C1", "kind": "capacitor", "farads": "2 nF"},
           {"ref": "C2", "kind": "capacitor", "farads": "1 nF"},
           {"ref": "U1", "kind": "dual-opamp", "type": "TL072"}],
         "nets": {
           "top": ["P1.+", "U1.8"], "bottom": ["P1.-", "U1.4"], "zero": ["P1.0", "C2.2", "G1.-"],
           "input": ["G1.+", "R1.1"], "middle": ["R1.2", "R2.1", "C1.1"],
           "plus": ["R2.2", "C2.1", "U1.3"], "output": ["U1.1", "U1.2", "C1.2"]},
         "readings": [
           {"id": "low", "ratio": {"of": ["U1.1", "P1.0"], "to": ["G1.+", "G1.-"], "in": "dB"}},
           {"id": "edge", "ratio": {"of": ["U1.1", "P1.0"], "to": ["G1.+", "G1.-"], "in": "dB"},
            "hertz": "10 kHz"},
           {"id": "octave", "ratio": {"of": ["U1.1", "P1.0"], "to": ["G1.+", "G1.-"], "in": "dB"},
            "hertz": "20 kHz"},
           {"id": "corner", "corner": {"of": ["U1.1", "P1.0"], "to": ["G1.+", "G1.-"]}}]},
       "build": {
         "placed": [
           {"ref": "P1", "holes": {"+": "+j3", "0": "-a3", "-": "-j3"}},
           {"ref": "G1", "holes": {"+": "a6", "-": "-a6"}},
           {"ref": "R1", "holes": {"1": "c6", "2": "c10"}},
           {"ref": "R2", "holes": {"1": "d10", "2": "d15"}},
           {"ref": "C2", "holes": {"1": "b15", "2": "b18"}},
           {"ref": "U1", "pin1": "e20"},
           {"ref": "C1", "holes": {"1": "h10", "2": "h14"}}],
         "links": [["-a18", "a18"], ["c15", "c22"], ["b20", "b21"], ["e10", "f10"],
                   ["g14", "a20"], ["d23", "-j22"], ["j20", "+j21"]],
         "readings": {"low": "0.0 dB", "edge": "-3.0 dB", "octave": "-12.3 dB",
                      "corner": "10.0 kHz"}}}
      """;

  private static RunningSchool school;
  private static String token;

  @BeforeAll
  static void open(@TempDir Path data) {
    school = RunningSchool.plain(data);
    var teacher = school.part(People.class).add("Una", Role.TEACHER, "seven bells in the tower");
    token = school.part(ApiTokens.class).make(teacher, "test");
  }

  @AfterAll
  static void close() {
    school.close();
  }

  @Test
  void aLowPassIsReadByTheBook() {
    JsonNode mark = mark(LOW_PASS);
    double turned = 2 * Math.PI * 1000 * 1e3 * 100e-9;
    assertVolts(mark, 0, 1 / Math.sqrt(2) / Math.sqrt(1 + turned * turned));
    assertVolts(mark, 1, 0.5);
    assertVolts(mark, 2, Math.sqrt(2));
    assertDecibels(mark, 3, -10 * Math.log10(1 + 100));
    double corner = 1 / (2 * Math.PI * 1e3 * 100e-9);
    assertThat(expected(mark, 4)).isCloseTo(corner, within(TWENTIETH * corner));
    assertEarnsEverything(mark, 5);
  }

  @Test
  void aButterworthFilterIsReadByTheBook() {
    JsonNode mark = mark(SALLEN_KEY);
    assertDecibels(mark, 0, 0);
    assertDecibels(mark, 1, -10 * Math.log10(2));
    assertDecibels(mark, 2, -10 * Math.log10(1 + 16));
    assertThat(expected(mark, 3)).isCloseTo(10e3, within(TWENTIETH * 10e3));
    assertEarnsEverything(mark, 4);
  }

  private static void assertVolts(JsonNode mark, int reading, double volts) {
    assertThat(mark.at("/readings/" + reading + "/unit").stringValue()).isEqualTo("V");
    assertThat(expected(mark, reading)).isCloseTo(volts, within(TWENTIETH * volts));
  }

  private static void assertDecibels(JsonNode mark, int reading, double decibels) {
    assertThat(mark.at("/readings/" + reading + "/unit").stringValue()).isEqualTo("dB");
    assertThat(expected(mark, reading)).isCloseTo(decibels, within(0.05));
  }

  private static double expected(JsonNode mark, int reading) {
    return mark.at("/readings/" + reading + "/expected").doubleValue();
  }

  private static void assertEarnsEverything(JsonNode mark, int readings) {
    assertThat(mark.get("findings")).isEmpty();
    assertThat(mark.at("/wiring/matches").booleanValue()).isTrue();
    assertThat(mark.get("readings")).hasSize(readings);
    mark.get("readings")
        .forEach(reading -> assertThat(reading.get("verdict").stringValue()).isEqualTo("within"));
    assertThat(mark.at("/marks/total").intValue()).isEqualTo(100);
  }

  private static JsonNode mark(String request) {
    var call =
        HttpRequest.newBuilder(school.at("/api/marks"))
            .header("Authorization", "Bearer " + token)
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(request));
    var answer = new Visitor(school).send(call.build());
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return JSON.readTree(answer.body());
  }
}
