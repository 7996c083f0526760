package org.holewise.engine.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.holewise.engine.Published;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Worked examples of linear circuits. LEC: Kuphaldt, Lessons in Electric Circuits, DC; CP, UP:
 * OpenStax College Physics, University Physics; Malvino and Bates 7e; Bird 2e; Grob.
 */
@Tag("fast")
class LinearDcTest {

  static Stream<Example> rows() {
    return Stream.of(
        Example.of(
            "D1 LEC DC 5",
            "B1 battery a 0 volts=9; R1 resistor a b ohms=3k; R2 resistor b c ohms=10k;"
                + "R3 resistor c 0 ohms=5k",
            "I(R1.1)=0.5m",
            "V(a,b)=1.5",
            "V(b,c)=5",
            "V(c,0)=2.5"),
        Example.of(
            "D2 LEC DC 5",
            "B1 battery a 0 volts=9; R1 resistor a 0 ohms=10k; R2 resistor a 0 ohms=2k;"
                + "R3 resistor a 0 ohms=1k",
            "I(R1.1)=0.9m",
            "I(R2.1)=4.5m",
            "I(R3.1)=9m"),
        Example.of(
            "D3 LEC DC 6",
            "B1 battery a 0 volts=45; R1 resistor a b ohms=5k; R2 resistor b c ohms=10k;"
                + "R3 resistor c 0 ohms=7.5k",
            "I(R3.1)=2m",
            "V(a,b)=10",
            "V(b,c)=20",
            "V(c,0)=15"),
        Example.of(
            "D4 LEC DC 7",
            "B1 battery a 0 volts=24; R1 resistor a b ohms=100; R2 resistor a b ohms=250;"
                + "R3 resistor b 0 ohms=350; R4 resistor b 0 ohms=200",
            "V(a,b)=8.6275",
            "V(b,0)=15.373",
            "I(R1.1)=86.275m",
            "I(R2.1)=34.510m",
            "I(R3.1)=43.922m",
            "I(R4.1)=76.863m",
            "seen(B1)=198.70"),
        Example.of(
            "D5 LEC DC 10",
            "B1 battery s 0 volts=28; R1 resistor s n ohms=4; R2 resistor n 0 ohms=2;"
                + "B2 battery t 0 volts=7; R3 resistor t n ohms=1",
            "V(n,0)=8",
            "I(R1.1)=5",
            "I(R2.1)=4",
            "I(B2.+)=1"),
        Example.of(
            "D6 LEC DC 10",
            "B1 battery s 0 volts=28; R1 resistor s n ohms=4;"
                + "B2 battery t 0 volts=7; R3 resistor t n ohms=1",
            "V(n,0)=11.2",
            "Rth(n,0)=0.8"),
        Example.of(
            "D6 LEC DC 10, shorted",
            "B1 battery s 0 volts=28; R1 resistor s n ohms=4;"
                + "B2 battery t 0 volts=7; R3 resistor t n ohms=1; S1 switch n 0 closed=true",
            "I(S1.1)=14"),
        Example.of(
            "D7 LEC DC 10",
            "B1 battery s 0 volts=24; R1 resistor s 1 ohms=150; R2 resistor s 2 ohms=50;"
                + "R3 resistor 1 2 ohms=100; R4 resistor 1 0 ohms=300; R5 resistor 2 0 ohms=250",
            "V(1,0)=17.655",
            "V(2,0)=19.310",
            "I(B1.-)=136.092m",
            "I(R2.1)=93.793m",
            "I(R5.1)=77.241m"),
        Example.of(
            "D8 LEC DC 10",
            "B1 battery s 0 volts=10; R1 resistor s 1 ohms=12; R2 resistor s 2 ohms=18;"
                + "R3 resistor 1 2 ohms=6; R4 resistor 1 0 ohms=18; R5 resistor 2 0 ohms=12",
            "V(1,0)=5.294",
            "V(2,0)=4.706",
            "V(1,2)=0.5882"),
        Example.of(
            "D9 LEC DC 10",
            "B1 battery s 0 volts=10; R1 resistor s 1 ohms=2; R2 resistor 1 0 ohms=4;"
                + "R3 resistor 1 2 ohms=2.5; R4 resistor 2 0 ohms=5; R5 resistor 2 m ohms=1;"
                + "B2 battery 0 m volts=4",
            "V(1,0)=3.809524",
            "V(2,0)=-1.547619"),
        Example.of(
            "D10 CP",
            "B1 battery a 0 volts=12; R1 resistor a b ohms=1; R2 resistor b c ohms=6;"
                + "R3 resistor c 0 ohms=13",
            "I(R1.1)=0.600",
            "V(a,b)=0.6",
            "V(b,c)=3.6",
            "V(c,0)=7.8",
            "P(R1)=0.36",
            "P(R2)=2.16",
            "P(R3)=4.68"),
        Example.of(
            "D11 CP",
            "B1 battery a 0 volts=12; R1 resistor a 0 ohms=1; R2 resistor a 0 ohms=6;"
                + "R3 resistor a 0 ohms=13",
            "seen(B1)=0.804",
            "I(B1.-)=14.92"),
        Example.of(
            "D12 CP",
            "B1 battery a 0 volts=12; R1 resistor a b ohms=1; R2 resistor b 0 ohms=6;"
                + "R3 resistor b 0 ohms=13",
            "seen(B1)=5.11",
            "I(R1.1)=2.35",
            "V(a,b)=2.35"),
        Example.of(
            "D13 UP",
            "B1 battery a 0 volts=9; R1 resistor a b ohms=20; R2 resistor b c ohms=20;"
                + "R3 resistor c d ohms=20; R4 resistor d e ohms=20; R5 resistor e 0 ohms=10",
            "I(R1.1)=0.1",
            "V(a,b)=2",
            "V(d,e)=2",
            "V(e,0)=1",
            "P(B1)=-0.9"),
        Example.of(
            "D14 UP, 10 ohms",
            "B1 battery a 0 volts=12 internal=0.1; R1 resistor a 0 ohms=10",
            "V(a,0)=11.9"),
        Example.of(
            "D14 UP, 0.5 ohms",
            "B1 battery a 0 volts=12 internal=0.1; R1 resistor a 0 ohms=0.5",
            "V(a,0)=10.0",
            "P(R1)=200"),
        Example.of(
            "D14 UP, a tired battery",
            "B1 battery a 0 volts=12 internal=0.5; R1 resistor a 0 ohms=0.5",
            "I(R1.1)=12"),
        Example.of(
            "D18 UP",
            "B1 battery a 0 volts=1.58 internal=0.02; B2 battery b a volts=1.58 internal=0.02;"
                + "B3 battery c b volts=1.58 internal=0.02; B4 battery d c volts=1.53 internal=0.1;"
                + "R1 resistor d 0 ohms=10",
            "I(R1.1)=0.617",
            "P(R1)=3.81"),
        Example.of(
            "D19 Malvino 1-4",
            "B1 battery s 0 volts=72; R1 resistor s n ohms=6k; R2 resistor n 0 ohms=3k;"
                + "R3 resistor n out ohms=4k",
            "V(out,0)=24",
            "Rth(out,0)=6k"),
        Example.of(
            "D20 Malvino 1-5",
            "B1 battery s 0 volts=72; R1 resistor s 1 ohms=2k; R2 resistor 1 0 ohms=2k;"
                + "R3 resistor 1 2 ohms=1k; R4 resistor 2 0 ohms=2k; R5 resistor 2 3 ohms=1k;"
                + "R6 resistor 3 0 ohms=2k; R7 resistor 3 out ohms=0.5k",
            "V(out,0)=9",
            "Rth(out,0)=1.5k"),
        Example.of(
            "D20 Malvino 1-5, loaded (calc)",
            "B1 battery s 0 volts=72; R1 resistor s 1 ohms=2k; R2 resistor 1 0 ohms=2k;"
                + "R3 resistor 1 2 ohms=1k; R4 resistor 2 0 ohms=2k; R5 resistor 2 3 ohms=1k;"
                + "R6 resistor 3 0 ohms=2k; R7 resistor 3 out ohms=0.5k; R8 resistor out 0 ohms=1k",
            "V(out,0)=3.6"),
        Example.of(
            "D21 Bird 13.2",
            "B1 battery a 0 volts=4; R1 resistor a n ohms=2; B2 battery b 0 volts=2;"
                + "R2 resistor b n ohms=1; R3 resistor n 0 ohms=4",
            "I(R1.1)=0.857",
            "I(R2.1)=-0.286",
            "I(R3.1)=0.571",
            "P(R3)=1.306"),
        Example.of(
            "D22 Bird 13.6",
            "B1 battery a 0 volts=8; R1 resistor a n ohms=3; B2 battery 0 b volts=3;"
                + "R2 resistor b n ohms=2; R3 resistor n 0 ohms=18",
            "I(R3.1)=0.073",
            "V(n,0)=1.313",
            "I(R1.1)=2.229",
            "I(R2.2)=2.156"),
        Example.of(
            "D23 Bird 13.4",
            "B1 battery s 0 volts=54; R1 resistor s a ohms=2; R2 resistor s b ohms=14;"
                + "R3 resistor a 0 ohms=11; R4 resistor b 0 ohms=3; R5 resistor a b ohms=32",
            "I(R1.1)=5",
            "I(R2.1)=3",
            "I(R3.1)=4",
            "I(R4.1)=4",
            "I(R5.1)=1"),
        Example.of(
            "D25 Grob 9-2",
            "B1 battery p g volts=18; B2 battery g m volts=18; R1 resistor p a ohms=120;"
                + "R2 resistor a b ohms=100; R3 resistor b m ohms=180",
            "V(a,g)=7.20",
            "V(b,g)=-1.80"),
        Example.of(
            "D26 LEC DC 11",
            "B1 battery a 0 volts=10 internal=0.2; R1 resistor a 0 ohms=1",
            "I(R1.1)=8.333"),
        Example.of(
            "D26 LEC DC 11, shorted",
            "B1 battery a 0 volts=10 internal=0.2; R1 resistor a 0 ohms=1;"
                + "S1 switch a 0 closed=true",
            "I(S1.1)=50",
            "V(a,0)=0"),
        Example.of(
            "CP 21, Kirchhoff's rules (from memory)",
            "B1 battery e p volts=18 internal=0.5; R1 resistor e a ohms=6;"
                + "R2 resistor a p ohms=2.5;"
                + "R3 resistor a q ohms=1.5; B2 battery e q volts=45 internal=0.5",
            "I(R1.1)=4.75",
            "I(R2.1)=-3.50",
            "I(R3.1)=8.25"),
        Example.of(
            "UP 10, series and parallel (from memory)",
            "B1 battery a 0 volts=12; R1 resistor a b ohms=7; R2 resistor b 0 ohms=10;"
                + "R3 resistor b c ohms=6; R4 resistor c 0 ohms=4",
            "seen(B1)=12",
            "V(a,b)=7",
            "V(b,0)=5",
            "I(R2.1)=0.5",
            "I(R3.1)=0.5"),
        quarterWatt("5", "100", "0.250"),
        quarterWatt("9", "324", "0.250"),
        quarterWatt("12", "576", "0.250"),
        Example.of(
            "9 V alkaline, shorted (maker's sheet 1.7 ohms; calc)",
            "B1 battery a 0 volts=9 internal=1.7; S1 switch a 0 closed=true",
            "I(S1.1)=5.3"));
  }

  /** The least resistor of a quarter watt that a supply may lie across. */
  private static Example quarterWatt(String volts, String ohms, String watts) {
    return Example.of(
        "quarter watt at %s V (calc)".formatted(volts),
        "B1 battery a 0 volts=%s; R1 resistor a 0 ohms=%s".formatted(volts, ohms),
        "P(R1)=" + watts);
  }

  @ParameterizedTest
  @Published(Family.LINEAR)
  @MethodSource("rows")
  void agreesWithTheBook(Example example) {
    example.check();
  }

  /**
   * D24: a bridge in balance reads nothing. College Physics, R3 2500 Ω and R2/R1 0.625, R_x 1.56 kΩ
   * (1562.5); Grob 6-1, 5642 Ω with 1k/10k, 564.2 Ω.
   */
  @Test
  @Published(Family.LINEAR)
  void aWheatstoneBridgeIsInBalanceAtTheBooksResistance() {
    assertThat(detector(1600, 1000, 2500, 1562.5)).isCloseTo(0, within(1e-13));
    assertThat(detector(1600, 1000, 2500, 1570)).isGreaterThan(1e-3);
    assertThat(detector(1600, 1000, 2500, 1555)).isLessThan(-1e-3);
    assertThat(detector(10_000, 1000, 5642, 564.2)).isCloseTo(0, within(1e-13));
  }

  /** Voltage of the unknown's corner over the other. */
  private static double detector(double r1, double r2, double r3, double unknown) {
    Rows rows =
        Rows.of(
            "B1 battery s 0 volts=6; R1 resistor s a ohms=%s; R2 resistor a 0 ohms=%s;"
                    .formatted(r1, r2)
                + "R3 resistor s b ohms=%s; R4 resistor b 0 ohms=%s".formatted(r3, unknown));
    return Rows.solved(rows.circuit()).volts(rows.at("b"), rows.at("a"));
  }
}
