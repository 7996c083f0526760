package org.holewise.engine.exercise;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Unit;

/** What is measured and where. */
public sealed interface Measure {

  /** All keys, in the order of the format. */
  List<String> KEYS =
      List.of(
          "volts",
          "amps",
          "ohms",
          "joined",
          "drop",
          "acvolts",
          "peak",
          "ratio",
          "frequency",
          "corner",
          "resonance",
          "quality",
          "level",
          "seen");

  /** Keys of what is measured between two points; see {@link #between}. */
  List<String> BETWEEN = List.of("volts", "ohms", "joined", "drop", "acvolts", "peak");

  /** Keys of what is measured at one lead; see {@link #at}. */
  List<String> AT_A_LEAD = List.of("amps", "frequency", "level");

  /** Keys of what compares one AC voltage to another; see {@link #compared}. */
  List<String> COMPARED = List.of("ratio", "corner", "resonance", "quality");

  /**
   * What is measured between two points.
   *
   * @param key one of {@link #BETWEEN}
   * @param alone with ohms: the part out of the board
   */
  static Measure between(String key, Probe one, Probe other, boolean alone) {
    return switch (key) {
      case "volts" -> new Volts(one, other);
      case "ohms" -> new Ohms(one, other, alone);
      case "joined" -> new Joined(one, other);
      case "drop" -> new Drop(one, other);
      case "acvolts" -> new AcVolts(one, other);
      case "peak" -> new Peak(one, other);
      default -> throw new IllegalArgumentException(key);
    };
  }

  /**
   * What is measured at one lead.
   *
   * @param key one of {@link #AT_A_LEAD}
   */
  static Measure at(String key, Pin pin) {
    return switch (key) {
      case "amps" -> new Amps(pin);
      case "frequency" -> new Frequency(pin);
      case "level" -> new Level(pin);
      default -> throw new IllegalArgumentException(key);
    };
  }

  /**
   * What compares one AC voltage to another.
   *
   * @param key one of {@link #COMPARED}
   * @param choice one of {@link Compared#choices}
   */
  static Measure compared(String key, Pair of, Pair to, String choice) {
    return switch (key) {
      case "ratio" -> new Ratio(of, to, choice.equals("dB"));
      case "corner" -> new Corner(of, to, choice.equals("upper"));
      case "resonance" -> new Resonance(of, to);
      case "quality" -> new Quality(of, to);
      default -> throw new IllegalArgumentException(key);
    };
  }

  /** Its kind as documents and typed lines have it, such as {@code volts}. */
  String key();

  /** What it is read in; empty for what is read as a word. */
  Optional<Unit> unit();

  /** Whether it is a place along the frequencies, which goes by the inverse of parts' values. */
  default boolean tuned() {
    return unit().filter(Unit.HERTZ::equals).isPresent() || this instanceof Quality;
  }

  /** The points that the instrument touches, in the order written; none for what is seen. */
  List<Probe> points();

  /** DC voltage, red lead first (V). */
  record Volts(Probe red, Probe black) implements Measure {
    @Override
    public String key() {
      return "volts";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.VOLT);
    }

    @Override
    public List<Probe> points() {
      return List.of(red, black);
    }
  }

  /** DC current into a pin, the meter in series at it (A). */
  record Amps(Pin pin) implements Measure {
    @Override
    public String key() {
      return "amps";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.AMP);
    }

    @Override
    public List<Probe> points() {
      return List.of(Probe.at(pin));
    }
  }

  /** Resistance, the supply off (Ω); {@code alone}: the part out of the board. */
  record Ohms(Probe one, Probe other, boolean alone) implements Measure {
    @Override
    public String key() {
      return "ohms";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.OHM);
    }

    @Override
    public List<Probe> points() {
      return List.of(one, other);
    }
  }

  /** The buzzer: whether two points are joined, the supply off. */
  record Joined(Probe one, Probe other) implements Measure {
    @Override
    public String key() {
      return "joined";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.empty();
    }

    @Override
    public List<Probe> points() {
      return List.of(one, other);
    }
  }

  /** The diode test: what a test current drops from {@code a} to {@code k}, the supply off (V). */
  record Drop(Probe a, Probe k) implements Measure {
    @Override
    public String key() {
      return "drop";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.VOLT);
    }

    @Override
    public List<Probe> points() {
      return List.of(a, k);
    }
  }

  /** AC voltage, its root mean square (V). */
  record AcVolts(Probe red, Probe black) implements Measure {
    @Override
    public String key() {
      return "acvolts";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.VOLT);
    }

    @Override
    public List<Probe> points() {
      return List.of(red, black);
    }
  }

  /** AC voltage from peak to peak, as a scope shows it (V). */
  record Peak(Probe tip, Probe clip) implements Measure {
    @Override
    public String key() {
      return "peak";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.VOLT);
    }

    @Override
    public List<Probe> points() {
      return List.of(tip, clip);
    }
  }

  /** What compares one AC voltage to another. */
  sealed interface Compared extends Measure {

    /** What a kind leaves to choose, the usual one first; nothing for most. */
    static List<String> choices(String key) {
      return switch (key) {
        case "ratio" -> List.of("dB", "plain");
        case "corner" -> List.of("upper", "lower");
        default -> List.of();
      };
    }

    /** The voltage that is compared. */
    Pair of();

    /** The voltage that it is compared to. */
    Pair to();

    /** Which of {@link #choices} it is; empty where there is none. */
    default String choice() {
      return "";
    }

    @Override
    default Optional<Unit> unit() {
      return Optional.of(Unit.HERTZ);
    }

    @Override
    default List<Probe> points() {
      return Stream.of(of(), to()).flatMap(pair -> Stream.of(pair.red(), pair.black())).toList();
    }
  }

  /** One AC voltage as a multiple of another, in decibels or plain. */
  record Ratio(Pair of, Pair to, boolean decibel) implements Compared {
    @Override
    public String key() {
      return "ratio";
    }

    @Override
    public String choice() {
      return decibel ? "dB" : "plain";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(decibel ? Unit.DECIBEL : Unit.COUNT);
    }
  }

  /**
   * The frequency at which a ratio has fallen to 1/√2 (−3 dB) of its greatest: above it, or below
   * (Hz).
   */
  record Corner(Pair of, Pair to, boolean upper) implements Compared {
    @Override
    public String key() {
      return "corner";
    }

    @Override
    public String choice() {
      return upper ? "upper" : "lower";
    }
  }

  /** The frequency at which a ratio is greatest (Hz). */
  record Resonance(Pair of, Pair to) implements Compared {
    @Override
    public String key() {
      return "resonance";
    }
  }

  /** The frequency at which a ratio is greatest, over the distance of its corners (plain). */
  record Quality(Pair of, Pair to) implements Compared {
    @Override
    public String key() {
      return "quality";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.COUNT);
    }
  }

  /** Two points between which there is a voltage, red lead first. */
  record Pair(Probe red, Probe black) {}

  /** How often a signal repeats (Hz). */
  record Frequency(Pin pin) implements Measure {
    @Override
    public String key() {
      return "frequency";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(Unit.HERTZ);
    }

    @Override
    public List<Probe> points() {
      return List.of(Probe.at(pin));
    }
  }

  /** A logic level: {@code H} or {@code L}. */
  record Level(Pin pin) implements Measure {
    @Override
    public String key() {
      return "level";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.empty();
    }

    @Override
    public List<Probe> points() {
      return List.of(Probe.at(pin));
    }
  }

  /** What a lamp does, by eye. */
  record Seen(String ref) implements Measure {
    @Override
    public String key() {
      return "seen";
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.empty();
    }

    @Override
    public List<Probe> points() {
      return List.of();
    }
  }
}
