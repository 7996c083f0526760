package org.holewise.engine.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.quantity.Parameter;

/**
 * What no edit of a circuit changes: parts and nets as they were given, and how pins and parameters
 * are numbered. Immutable.
 *
 * @param firstPin number of each part's first pin, and the count of all
 * @param firstParameter number of each part's first parameter, and the count of all that parts
 *     have; one more is of bad contacts
 * @param order the parts by ref: what is solved does not depend on the order of the list
 * @param reference spot whose voltage is zero
 */
record Plan(
    List<Part> parts,
    Netlist netlist,
    double celsius,
    Map<Pin, Integer> pins,
    List<Stamp> stamps,
    List<Parameter> parameters,
    int[] firstPin,
    int[] firstParameter,
    int[] order,
    int reference) {

  static Plan of(List<Part> parts, Netlist netlist, double celsius) {
    var pins = new LinkedHashMap<Pin, Integer>();
    var stamps = new ArrayList<Stamp>();
    var parameters = new ArrayList<Parameter>();
    int[] firstPin = new int[parts.size() + 1];
    int[] firstParameter = new int[parts.size() + 1];
    for (int k = 0; k < parts.size(); k++) {
      parts.get(k).pins().forEach(pin -> pins.put(pin, pins.size()));
      Stamp stamp = Stamp.of(parts.get(k), celsius, netlist);
      stamps.add(stamp);
      parameters.addAll(stamp.parameters);
      firstPin[k + 1] = pins.size();
      firstParameter[k + 1] = parameters.size();
    }
    parameters.add(Parameter.exact(Circuit.CONTACT, 0));
    return new Plan(
        List.copyOf(parts),
        netlist,
        celsius,
        pins,
        List.copyOf(stamps),
        List.copyOf(parameters),
        firstPin,
        firstParameter,
        byRef(parts),
        reference(parts, netlist, pins));
  }

  /** The same parts on other nets; laws are written anew only where they depend on that. */
  Plan on(Netlist other) {
    for (int k = 0; k < parts.size(); k++) {
      if (!stamps.get(k).holds(parts.get(k), other)) {
        return of(parts, other, celsius);
      }
    }
    return new Plan(
        parts,
        other,
        celsius,
        pins,
        stamps,
        parameters,
        firstPin,
        firstParameter,
        order,
        reference(parts, other, pins));
  }

  private static int[] byRef(List<Part> parts) {
    return IntStream.range(0, parts.size())
        .boxed()
        .sorted(Comparator.comparing(k -> parts.get(k).ref()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Minus of the first source, or its last pin; the first net where there is no source. */
  private static int reference(List<Part> parts, Netlist netlist, Map<Pin, Integer> pins) {
    return earth(parts).map(minus -> netlist.nets().size() + pins.getOrDefault(minus, 0)).orElse(0);
  }

  /** The pin whose bare metal is the reference; empty where there is no source. */
  Optional<Pin> earth() {
    return earth(parts);
  }

  private static Optional<Pin> earth(List<Part> parts) {
    return parts.stream().filter(part -> part.kind().source()).findFirst().map(Part::minus);
  }

  /** The plus pin of the first source; empty where there is none. */
  Optional<Pin> summit() {
    return parts.stream()
        .filter(part -> part.kind().source())
        .findFirst()
        .map(
            source ->
                source.pins().stream()
                    .filter(pin -> pin.name().equals("+"))
                    .findFirst()
                    .orElse(source.pins().get(0)));
  }

  int nets() {
    return netlist.nets().size();
  }

  int pin(Pin pin) {
    Integer number = pins.get(pin);
    if (number == null) {
      throw new IllegalArgumentException("no such pin: " + pin);
    }
    return number;
  }

  int part(String ref) {
    for (int k = 0; k < parts.size(); k++) {
      if (parts.get(k).ref().equals(ref)) {
        return k;
      }
    }
    throw new IllegalArgumentException("no such part: " + ref);
  }

  /** The pin of a part by its place among the part's pins. */
  Pin pinOf(int part, int place) {
    return parts.get(part).pins().get(place);
  }
}
