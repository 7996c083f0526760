package org.holewise.engine.part;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What each pin of a package does, as its data sheet has it, in the order of the numbers. Pins that
 * do nothing are called {@code NC}. Immutable.
 */
record Pinout(List<String> names) {
  private static final List<String> PLUS = List.of("VCC", "VDD");
  private static final List<String> MINUS = List.of("GND", "VSS");

  static Pinout of(String names) {
    return new Pinout(List.of(names.split(" ")));
  }

  /** Numbers of the pins as an exercise writes them. */
  List<String> numbers() {
    return IntStream.rangeClosed(1, names.size()).mapToObj(Integer::toString).toList();
  }

  /** The number of the pin that does so. */
  String number(String name) {
    int at = names.indexOf(name);
    if (at < 0) {
      throw new IllegalArgumentException("no pin " + name + " among " + names);
    }
    return Integer.toString(at + 1);
  }

  String plus() {
    return supply(PLUS);
  }

  String minus() {
    return supply(MINUS);
  }

  private String supply(List<String> either) {
    return either.stream().filter(names::contains).map(this::number).findFirst().orElseThrow();
  }

  /** Numbers of several pins, their names in one text. */
  List<String> numbers(String some) {
    return some.isEmpty() ? List.of() : Stream.of(some.split(" ")).map(this::number).toList();
  }

  /** What the pins are for: inputs and outputs in the order given, then the others. */
  List<Leg> legs(String inputs, String outputs) {
    List<String> in = List.of(inputs.split(" "));
    List<String> out = List.of(outputs.split(" "));
    return Stream.of(in, out, names)
        .flatMap(List::stream)
        .filter(names::contains)
        .distinct()
        .flatMap(name -> every(name, role(name, in, out)))
        .toList();
  }

  private Stream<Leg> every(String name, Leg.Role role) {
    return IntStream.range(0, names.size())
        .filter(i -> names.get(i).equals(name))
        .mapToObj(i -> new Leg(Integer.toString(i + 1), name, role));
  }

  private static Leg.Role role(String name, List<String> in, List<String> out) {
    if (PLUS.contains(name)) {
      return Leg.Role.PLUS;
    }
    if (MINUS.contains(name)) {
      return Leg.Role.MINUS;
    }
    if (name.equals("NC")) {
      return Leg.Role.UNUSED;
    }
    return in.contains(name)
        ? Leg.Role.INPUT
        : out.contains(name) ? Leg.Role.OUTPUT : Leg.Role.PLAIN;
  }

  /** All numbers, two sets of pins exchanged: an image for {@link Kind#exchanges}. */
  List<String> exchanged(List<String> some, List<String> others) {
    var image = new ArrayList<>(numbers());
    for (int i = 0; i < some.size(); i++) {
      image.set(Integer.parseInt(some.get(i)) - 1, others.get(i));
      image.set(Integer.parseInt(others.get(i)) - 1, some.get(i));
    }
    return image;
  }
}
