package org.holewise.drawing.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.engine.part.Feed;
import org.holewise.engine.part.Leg;
import org.holewise.engine.part.Part;

/**
 * The forms of parts. A kind that has none of its own is a box with its pins. Stateless.
 *
 * @param style whose general forms
 */
public record Symbols(SymbolStyle style) {

  /** The pins of a half of a dual op-amp or comparator: −, +, out. */
  private static final List<List<String>> HALVES =
      List.of(List.of("2", "3", "1"), List.of("6", "5", "7"));

  private static final List<String> SUPPLY = List.of("8", "4");

  /** Which side of a block a pin is on. */
  public enum Side {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM
  }

  /** Whether a part is two triangles. */
  public static boolean halved(Part part) {
    return part.kind().name().equals("dual-opamp") || part.kind().name().equals("comparator");
  }

  /** The halves that are wired, 1 and 2; none where no pin of a half is. */
  public static List<Integer> halves(Part part, Predicate<String> wired) {
    var halves = new ArrayList<Integer>();
    for (int half = 0; half < HALVES.size(); half++) {
      if (HALVES.get(half).stream().anyMatch(wired)) {
        halves.add(half + 1);
      }
    }
    return halves;
  }

  /** The pins of a half: −, +, out. */
  public static List<String> half(int number) {
    return HALVES.get(number - 1);
  }

  /** A half, its wired supply pins where it is the one that shows them. */
  public Form half(int number, boolean plusOnTop, Predicate<String> wired, boolean supply) {
    List<String> pins = half(number);
    List<String> shown = supply && SUPPLY.stream().anyMatch(wired) ? SUPPLY : List.of();
    return Triangle.of(pins.get(0), pins.get(1), pins.get(2), shown, plusOnTop);
  }

  /** Whether a part's form is a rectangle whose pins may be put on its sides. */
  public static boolean block(Part part) {
    return switch (part.kind().name()) {
      case "resistor",
          "photoresistor",
          "thermistor",
          "capacitor",
          "electrolytic",
          "inductor",
          "diode",
          "zener",
          "led",
          "battery",
          "generator",
          "switch",
          "button",
          "changeover",
          "npn",
          "pnp",
          "nmos",
          "pmos",
          "potentiometer" ->
          false;
      case "supply" -> chained(part).isEmpty();
      default -> part.pins().size() != 2;
    };
  }

  /** The form of a part that is neither halved nor a block. */
  public Form form(Part part, Predicate<String> wired) {
    var two = new TwoEnded(style);
    var channel = new Channel(style);
    return switch (part.kind().name()) {
      case "resistor" -> two.resistor();
      case "photoresistor" -> two.photoresistor();
      case "thermistor" -> two.thermistor();
      case "capacitor" -> two.capacitor("1", "2", false);
      case "electrolytic" -> two.capacitor("+", "-", true);
      case "inductor" -> two.inductor();
      case "diode" -> two.diode();
      case "zener" -> two.zener();
      case "led" -> two.led();
      case "battery" -> two.battery();
      case "generator" -> two.generator(part);
      case "switch" -> two.contact(part.fields().flag("closed", false));
      case "button" -> two.button(part.fields().flag("closed", false), buttonPins(wired));
      case "changeover" -> changeover(part.fields().text("to").orElse("1"));
      case "npn" -> channel.bipolar(true);
      case "pnp" -> channel.bipolar(false);
      case "nmos" -> channel.mosfet(true);
      case "pmos" -> channel.mosfet(false);
      case "potentiometer" -> channel.potentiometer();
      case "supply" -> supply(part);
      default -> two.unknown(part.pins().stream().map(pin -> pin.name()).toList());
    };
  }

  /** The wired pins, and the first of each pair where none of it is. */
  private static List<String> buttonPins(Predicate<String> wired) {
    var pins = new ArrayList<String>();
    for (String end : List.of("1", "2")) {
      if (wired.test(end) || !wired.test(end + "a")) {
        pins.add(end);
      }
      if (wired.test(end + "a")) {
        pins.add(end + "a");
      }
    }
    return pins;
  }

  private static Form changeover(String to) {
    int up = to.equals("1") ? -1 : 1;
    return new Form(
        Form.Manner.BLOCK,
        List.of(
            new Form.Port("c", new Point(-30, 0), new Point(-15, 0)),
            new Form.Port("1", new Point(30, -10), new Point(15, -10)),
            new Form.Port("2", new Point(30, 10), new Point(15, 10))),
        Area.between(-15, -14, 15, 14),
        List.of(),
        pen -> {
          pen.lines(-30, 0, -12, 0).lines(12, -10, 30, -10).lines(12, 10, 30, 10);
          pen.lines(-12, 0, 11, 8.5 * up).stroke("line");
          pen.circle(-12, 0, 2.2).circle(12, -10, 2.2).circle(12, 10, 2.2).stroke("ground");
        });
  }

  /** The pins of a supply whose outputs stand on each other, from the top; else nothing. */
  private static List<String> chained(Part part) {
    List<Feed> feeds = part.kind().feeds(part);
    var pins = new ArrayList<String>(List.of(feeds.get(0).plus()));
    for (Feed feed : feeds) {
      if (!feed.plus().equals(pins.get(pins.size() - 1)) || pins.contains(feed.minus())) {
        return List.of();
      }
      pins.add(feed.minus());
    }
    return pins;
  }

  private Form supply(Part part) {
    List<String> pins = chained(part);
    int n = pins.size() - 1;
    if (n == 1) {
      return new TwoEnded(style).source(pins.get(0), pins.get(1));
    }
    int half = n * 30;
    var ports = new ArrayList<Form.Port>();
    ports.add(new Form.Port(pins.get(0), new Point(0, -half), new Point(0, 15 - half)));
    for (int i = 1; i < n; i++) {
      int y = i * 60 - half;
      ports.add(new Form.Port(pins.get(i), new Point(30, y), new Point(15, y)));
    }
    ports.add(new Form.Port(pins.get(n), new Point(0, half), new Point(0, half - 15)));
    return new Form(
        Form.Manner.BLOCK,
        ports,
        Area.between(-15, 15 - half, 15, half - 15),
        List.of(),
        pen -> {
          for (int i = 0; i < n; i++) {
            stacked(pen, i * 60 + 30 - half);
          }
          for (int i = 1; i < n; i++) {
            pen.lines(0, i * 60 - half, 30, i * 60 - half).stroke("line");
            pen.circle(0, i * 60 - half, 3).stroke("solid");
          }
        });
  }

  private static void stacked(Pen pen, int y) {
    pen.circle(0, y, 15).lines(0, y - 30, 0, y - 15).lines(0, y + 15, 0, y + 30).stroke("line");
    pen.lines(-3, y - 7.5, 3, y - 7.5)
        .lines(0, y - 10.5, 0, y - 4.5)
        .lines(-3, y + 7.5, 3, y + 7.5);
    pen.stroke("thin");
  }

  /** A block with these pins on its sides, in the order of its kind's legs. */
  public Form block(Part part, Map<String, Side> sides, int pitch) {
    return new ChipBlock(
            on(part, sides, Side.LEFT),
            on(part, sides, Side.RIGHT),
            on(part, sides, Side.TOP),
            on(part, sides, Side.BOTTOM),
            pitch,
            part.kind().name().equals("seven-segment"))
        .form();
  }

  private static List<Leg> on(Part part, Map<String, Side> sides, Side side) {
    return part.kind().legs(part.fields()).stream()
        .filter(leg -> sides.get(leg.pin()) == side)
        .toList();
  }
}
