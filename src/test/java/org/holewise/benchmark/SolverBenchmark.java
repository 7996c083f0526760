package org.holewise.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.holewise.engine.netlist.BuiltNet;
import org.holewise.engine.netlist.Netlist;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;
import org.holewise.engine.solver.Circuit;
import org.holewise.engine.solver.Edit;
import org.holewise.engine.solver.OperatingPoint;
import org.holewise.engine.solver.OperatingPointSolver;
import org.holewise.engine.solver.Outcome;
import org.holewise.engine.solver.Point;
import org.holewise.engine.solver.Response;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What solving costs: ten parts, two lamps in a row, a divider and a transistor. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SolverBenchmark {
  private final Circuit circuit = circuit();
  private final OperatingPoint point = (OperatingPoint) OperatingPointSolver.solve(circuit);
  private final Point anode = new Point.AtPin(new Pin("D1", "a"));
  private final Point cathode = new Point.AtPin(new Pin("D1", "k"));
  private final List<Edit> meter = List.of(new Edit.Across(anode, cathode, 10e6));
  private final List<Edit> open = List.of(new Edit.Contact(new Pin("R2", "1"), 1e9));
  private final List<Edit> dark = List.of(new Edit.Contact(new Pin("R1", "2"), 1e9));

  /** From nothing. */
  @Benchmark
  public Outcome cold() {
    return OperatingPointSolver.solve(circuit);
  }

  /** With a voltmeter across a lamp, from the point without. */
  @Benchmark
  public Outcome withMeter() {
    return OperatingPointSolver.solve(circuit.with(meter), point);
  }

  /** With an open contact that the transistor feels, from the point without. */
  @Benchmark
  public Outcome withOpenContact() {
    return OperatingPointSolver.solve(circuit.with(open), point);
  }

  /** With an open contact that puts the lamps out, from the point without: the longest way. */
  @Benchmark
  public Outcome withLampsOut() {
    return OperatingPointSolver.solve(circuit.with(dark), point);
  }

  /** Slopes by every parameter. */
  @Benchmark
  public Response response() {
    return point.response(anode, cathode);
  }

  private static Circuit circuit() {
    var parts = new ArrayList<Part>();
    var pins = new LinkedHashMap<String, List<Pin>>();
    add(parts, pins, "B1", "battery", Map.of("volts", 9.0, "internal", 1.5), "s", "0");
    add(parts, pins, "S1", "switch", Map.of("closed", true), "s", "f");
    add(parts, pins, "R1", "resistor", Map.of("ohms", 390.0), "f", "l");
    add(parts, pins, "D1", "led", Map.of("colour", "red"), "l", "m");
    add(parts, pins, "D2", "led", Map.of("colour", "green"), "m", "0");
    add(parts, pins, "R2", "resistor", Map.of("ohms", 10e3), "f", "b");
    add(parts, pins, "R3", "resistor", Map.of("ohms", 4.7e3), "b", "0");
    add(parts, pins, "Q1", "npn", Map.of(), "c", "b", "e");
    add(parts, pins, "R4", "resistor", Map.of("ohms", 1e3), "f", "c");
    add(parts, pins, "R5", "resistor", Map.of("ohms", 470.0), "e", "0");
    return Circuit.of(parts, netlist(pins), 25);
  }

  private static void add(
      List<Part> parts,
      Map<String, List<Pin>> pins,
      String ref,
      String kind,
      Map<String, Object> fields,
      String... nets) {
    var part = new Part(ref, Registry.kind(kind).orElseThrow(), new Fields(fields));
    parts.add(part);
    for (int k = 0; k < nets.length; k++) {
      pins.computeIfAbsent(nets[k], name -> new ArrayList<>()).add(part.pins().get(k));
    }
  }

  private static Netlist netlist(Map<String, List<Pin>> pins) {
    var nets = new ArrayList<BuiltNet>();
    var netOf = new LinkedHashMap<Pin, Integer>();
    pins.forEach(
        (name, on) -> {
          on.forEach(pin -> netOf.put(pin, nets.size()));
          nets.add(new BuiltNet(name, on, List.of()));
        });
    return new Netlist(nets, netOf);
  }
}
