package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.holewise.engine.part.Level;
import org.holewise.engine.part.Logic;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chips with memory against the tables of their data sheets. */
@Tag("fast")
class CounterTablesTest {
  private static final String RIPPLE = "U1 74393 1=clk 2=0 12=5 13=0";

  private static String bits(int number, int count) {
    var bits = new StringBuilder();
    for (int bit = 0; bit < count; bit++) {
      bits.append((number >> bit & 1) == 1 ? 'H' : 'L');
    }
    return bits.toString();
  }

  /** Kuphaldt, Digital 11: 0000 to 1111 and over; SN74HC393 (SCLS143), count sequence. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 7, 8, 9, 15, 16, 17, 40, 10_000})
  @Published(Family.LOGIC)
  void aRippleCounterCountsInBinary(int pulses) {
    Settled after =
        new Bread().chip(RIPPLE).rows("R1 resistor clk 0 ohms=10k").after(pulses, "U1.1");
    assertThat(Bread.outputs(after, "U1")).isEqualTo(bits(pulses % 16, 4) + "LLLL");
  }

  /**
   * Kuphaldt, Digital 11: from 0111 a ripple counter passes 0110, 0100, 0000 on its way to 1000.
   */
  @Test
  @Published(Family.LOGIC)
  void aRippleCounterPassesWrongCountsOnItsWay() {
    Logic logic = new Bread().chip(RIPPLE).rows().circuit().mounted[1].stamp().gates.get(0).logic();
    Level[] memory = logic.start();
    for (int pulse = 0; pulse < 7; pulse++) {
      counts(logic, Level.HIGH, memory);
      counts(logic, Level.LOW, memory);
    }
    assertThat(counts(logic, Level.HIGH, memory)).containsExactly(0b0111);
    assertThat(counts(logic, Level.LOW, memory)).containsExactly(0b0110, 0b0100, 0b0000, 0b1000);
  }

  /** The counts that a half shows in turn, one step of delay each, until it comes to rest. */
  private static List<Integer> counts(Logic logic, Level clock, Level[] memory) {
    Level[] in = {clock, Level.LOW, Level.LOW, Level.LOW};
    var counts = new ArrayList<Integer>();
    Level[] before;
    do {
      before = memory.clone();
      var out = new Level[logic.outputs()];
      logic.step(in, memory, out);
      int count = 0;
      for (int bit = 0; bit < 4; bit++) {
        count |= out[bit] == Level.HIGH ? 1 << bit : 0;
      }
      if (counts.isEmpty() || counts.get(counts.size() - 1) != count) {
        counts.add(count);
      }
    } while (!Arrays.equals(before, memory));
    return counts;
  }

  /**
   * SN74HC393: QA–QD are pins 3 to 6, the other half's 11 to 8, clears 2 and 12, clocks 1 and 13.
   */
  @Test
  @Published(Family.LOGIC)
  void theHalvesOfARippleCounterInARowAreEightBits() {
    Settled after =
        new Bread()
            .chip("U1 74393 1=clk 2=0 6=mid 12=0 13=mid")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(200, "U1.1");
    assertThat(Bread.outputs(after, "U1")).isEqualTo(bits(200, 8));
  }

  @Test
  void clearHoldsAllAtZero() {
    Settled after =
        new Bread().chip("U1 74393 1=clk 2=5").rows("R1 resistor clk 0 ohms=10k").after(5, "U1.1");
    assertThat(Bread.outputs(after, "U1")).startsWith("LLLL");
  }

  /**
   * MC74HC161A: CLR 1, CLK 2, P0–P3 3–6, ENP 7, GND 8, LOAD 9, ENT 10, Q3–Q0 11–14, RCO 15, V_CC
   * 16; RCO is high at fifteen.
   */
  @ParameterizedTest
  @CsvSource({"74161, 1", "74161, 15", "74163, 6", "74163, 15", "74163, 16", "74161, 33"})
  @Published(Family.LOGIC)
  void aSynchronousCounterCounts(String kind, int pulses) {
    Settled after =
        new Bread()
            .chip("U1 " + kind + " 1=5 2=clk 3=0 4=0 5=0 6=0 7=5 9=5 10=5")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(pulses, "U1.2");
    String carry = pulses % 16 == 15 ? "H" : "L";
    assertThat(Bread.outputs(after, "U1")).isEqualTo(bits(pulses % 16, 4) + carry);
  }

  /** MC74HC163A: a load takes P over with the clock. */
  @Test
  @Published(Family.LOGIC)
  void aCounterThatIsLoadedStandsAtItsInputs() {
    Settled after =
        new Bread()
            .chip("U1 74163 1=5 2=clk 3=5 4=0 5=5 6=5 7=5 9=0 10=5")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(3, "U1.2");
    assertThat(Bread.outputs(after, "U1")).isEqualTo("HLHHL");
  }

  /** A gate makes it count to ten: Q1 and Q3 clear it at once, as Kuphaldt's Digital 11 has it. */
  @ParameterizedTest
  @CsvSource({"9, 9", "10, 0", "13, 3", "25, 5"})
  @Published(Family.LOGIC)
  void aCounterThatClearsItselfAtTenCountsInDecades(int pulses, int count) {
    Settled after =
        new Bread()
            .chip("U1 74161 1=clear 2=clk 3=0 4=0 5=0 6=0 7=5 9=5 10=5 13=q1 11=q3")
            .chip("U2 7400 1=q1 2=q3 3=clear")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(pulses, "U1.2");
    assertThat(Bread.outputs(after, "U1")).startsWith(bits(count, 4));
  }

  /**
   * CD4017B (SCHS027): Q0–Q9 are 3 2 4 7 10 1 5 6 9 11, carry 12, inhibit 13, clock 14, reset 15.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4, 5, 9, 10, 23})
  @Published(Family.LOGIC)
  void aDecadeCounterHasOneOutputHigh(int pulses) {
    Settled after =
        new Bread()
            .chip("U1 4017 13=0 14=clk 15=0")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(pulses, "U1.14");
    var one = new StringBuilder("LLLLLLLLLL");
    one.setCharAt(pulses % 10, 'H');
    assertThat(Bread.outputs(after, "U1")).isEqualTo(one + (pulses % 10 < 5 ? "H" : "L"));
  }

  /** SN74HC74 (SCLS094), function table: D as the clock rises; preset and clear while low. */
  @ParameterizedTest
  @CsvSource({"5, 5, 5, HL", "0, 5, 5, LH", "0, 0, 5, HL", "5, 5, 0, LH", "0, 0, 0, HH"})
  @Published(Family.LOGIC)
  void aFlipFlopTakesOverItsInput(String d, String preset, String clear, String q) {
    Settled after =
        new Bread()
            .chip("U1 7474 1=" + clear + " 2=" + d + " 3=clk 4=" + preset + " 10=5 13=5 11=0 12=0")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(1, "U1.3");
    assertThat(Bread.outputs(after, "U1")).startsWith(q);
  }

  /** Kuphaldt, Digital 10: a flip-flop fed from its own inverse halves its clock. */
  @ParameterizedTest
  @CsvSource({"1, HL", "2, LH", "7, HL"})
  @Published(Family.LOGIC)
  void aFlipFlopFedFromItsInverseHalves(int pulses, String q) {
    Settled after =
        new Bread()
            .chip("U1 7474 1=5 2=qn 3=clk 4=5 6=qn 10=5 13=5 11=0 12=0")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(pulses, "U1.3");
    assertThat(Bread.outputs(after, "U1")).startsWith(q);
  }

  /** SN74HC164 (SCLS115) and SN74HC595 (SCLS041): bits move on from QA. */
  @ParameterizedTest
  @CsvSource({"1, HLLLLLLL", "3, HHHLLLLL", "9, HHHHHHHH"})
  @Published(Family.LOGIC)
  void aShiftRegisterFillsUp(int pulses, String q) {
    Settled after =
        new Bread()
            .chip("U1 74164 1=5 2=5 8=clk 9=5")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(pulses, "U1.8");
    assertThat(Bread.outputs(after, "U1")).isEqualTo(q);
  }

  @Test
  void aLatchedShiftRegisterIsOnePulseBehindWhereItsClocksAreOne() {
    Settled after =
        new Bread()
            .chip("U1 74595 10=5 11=clk 12=clk 13=0 14=5")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(3, "U1.11");
    assertThat(Bread.outputs(after, "U1")).isEqualTo("HHLLLLLLL");
    Settled off = new Bread().chip("U1 74595 10=5 11=0 12=0 13=5 14=5").settled();
    assertThat(Bread.outputs(off, "U1")).isEqualTo("--------L");
  }

  /** CD4511B (SCHS072), truth table: segments a to g of the digits; above nine all are dark. */
  @ParameterizedTest
  @CsvSource({
    "0, HHHHHHL", "1, LHHLLLL", "2, HHLHHLH", "3, HHHHLLH", "4, LHHLLHH", "5, HLHHLHH",
    "6, LLHHHHH", "7, HHHLLLL", "8, HHHHHHH", "9, HHHLLHH", "10, LLLLLLL", "15, LLLLLLL"
  })
  @Published(Family.LOGIC)
  void aDecoderLightsTheSegmentsOfItsDigit(int digit, String segments) {
    String[] pins = {"7", "1", "2", "6"};
    var chip = new StringBuilder("U1 4511 3=5 4=5 5=0");
    for (int bit = 0; bit < 4; bit++) {
      chip.append(' ').append(pins[bit]).append('=').append((digit >> bit & 1) == 1 ? "5" : "0");
    }
    assertThat(Bread.outputs(new Bread().chip(chip.toString()).settled(), "U1"))
        .isEqualTo(segments);
  }

  @Test
  void aClockThatNothingDrivesLeavesTheCountUndefined() {
    Settled open = new Bread().chip("U1 74393 2=0 12=0 13=0").settled();
    assertThat(Bread.outputs(open, "U1")).isEqualTo("????LLLL");
  }

  @Test
  void anUnclearedWireAtClearLeavesTheCountUndefinedOnceItCounts() {
    Settled after =
        new Bread()
            .chip("U1 74393 1=clk 12=0 13=0")
            .rows("R1 resistor clk 0 ohms=10k")
            .after(1, "U1.1");
    assertThat(Bread.outputs(after, "U1")).startsWith("?");
  }
}
