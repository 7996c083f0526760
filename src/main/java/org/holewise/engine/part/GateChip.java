package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;

/**
 * Four gates of two inputs, or six inverters, by number. Pins from SN74HC00, SN74HC02, SN74HC04,
 * SN74HC08, SN74HC14, SN74HC32 and SN74HC86 (Texas Instruments); what a bipolar one draws from the
 * sheets of the LS family, the mean of outputs high and low.
 *
 * @param gates how many
 * @param legs inputs of each
 * @param rule what two inputs make; of an inverter both are the same
 */
record GateChip(
    String name,
    Pinout pinout,
    int gates,
    int legs,
    boolean schmitt,
    double idle,
    BinaryOperator<Level> rule)
    implements Chip {
  private static final Pinout USUAL = Pinout.of("1A 1B 1Y 2A 2B 2Y GND 3Y 3A 3B 4Y 4A 4B VCC");
  private static final Pinout NORS = Pinout.of("1Y 1A 1B 2Y 2A 2B GND 3A 3B 3Y 4A 4B 4Y VCC");
  private static final Pinout SIX = Pinout.of("1A 1Y 2A 2Y 3A 3Y GND 4Y 4A 5Y 5A 6Y 6A VCC");

  private static final List<GateChip> CHIPS =
      List.of(
          quad("7400", USUAL, 1.6e-3, (a, b) -> a.and(b).not()),
          quad("7402", NORS, 2.2e-3, (a, b) -> a.or(b).not()),
          quad("7408", USUAL, 3.4e-3, Level::and),
          quad("7432", USUAL, 4e-3, Level::or),
          quad("7486", USUAL, 6.1e-3, Level::xor),
          new GateChip("7404", SIX, 6, 1, false, 2.4e-3, (a, b) -> a.not()),
          new GateChip("7414", SIX, 6, 1, true, 10e-3, (a, b) -> a.not()));

  static final List<Kind> ALL = List.copyOf(CHIPS);

  /** Hundreds a chip, worked out once. */
  private static final Map<String, List<Map<String, String>>> EXCHANGES =
      CHIPS.stream().collect(Collectors.toUnmodifiableMap(GateChip::name, Exchanges::of));

  private static GateChip quad(
      String name, Pinout pinout, double idle, BinaryOperator<Level> rule) {
    return new GateChip(name, pinout, 4, 2, false, idle, rule);
  }

  @Override
  public String inputs() {
    var names = new StringJoiner(" ");
    for (int gate = 1; gate <= gates; gate++) {
      for (String leg : List.of("A", "B").subList(0, legs)) {
        names.add(gate + leg);
      }
    }
    return names.toString();
  }

  @Override
  public String outputs() {
    var names = new StringJoiner(" ");
    for (int gate = 1; gate <= gates; gate++) {
      names.add(gate + "Y");
    }
    return names.toString();
  }

  @Override
  public Family usual() {
    return Family.HC;
  }

  @Override
  public ChipLogic logic(Family family) {
    return new ChipLogic(
        family,
        schmitt,
        gates * legs,
        gates,
        List.of(),
        0,
        (in, memory, out) -> {
          for (int gate = 0; gate < gates; gate++) {
            out[gate] = rule.apply(in[gate * legs], in[gate * legs + legs - 1]);
          }
        });
  }

  /** Any gate for any other, and the inputs of each either way round. */
  @Override
  public List<Map<String, String>> exchanges(Fields fields) {
    return EXCHANGES.getOrDefault(name, List.of());
  }

  /** The pins of a gate, its inputs in one order or the other. */
  List<String> legs(int gate, boolean turned) {
    var names = new ArrayList<String>();
    names.add(pinout.number(gate + 1 + "Y"));
    if (legs == 1) {
      names.add(pinout.number(gate + 1 + "A"));
    } else {
      names.add(pinout.number(gate + 1 + (turned ? "B" : "A")));
      names.add(pinout.number(gate + 1 + (turned ? "A" : "B")));
    }
    return names;
  }
}
