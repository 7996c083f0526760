package org.holewise.engine.solver;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.holewise.engine.part.Pin;

/**
 * A circuit's operating point, with the factors of its Jacobian: answers to small changes cost one
 * solve with them. Immutable, and may be asked from several threads.
 */
public final class OperatingPoint implements Outcome {
  private final Circuit circuit;
  private final Spots spots;
  private final Nodes nodes;
  private final Elements elements;
  private final double[] x;
  private final PinCurrents currents;
  private final Adjoint adjoint;

  OperatingPoint(Circuit circuit, Spots spots, Newton newton, double[] x) {
    this.circuit = circuit;
    this.spots = spots;
    this.nodes = newton.equations.nodes;
    this.elements = newton.equations.elements;
    this.x = x;
    currents = new PinCurrents(circuit, spots, newton.equations, x);
    adjoint = new Adjoint(newton.equations, newton.factors, x, circuit.values.length);
  }

  public Circuit circuit() {
    return circuit;
  }

  /** Voltage of a point against the reference (V). */
  public double volts(Point point) {
    return voltsAt(spots.at(point));
  }

  private double voltsAt(int spot) {
    int node = nodes.at(spot);
    return node < 0 ? 0 : x[node];
  }

  /** Voltage of a spot of a part's own (V). */
  double volts(int part, int spot) {
    return voltsAt(spots.own(part, spot));
  }

  /** Whether anything but inputs of logic leads from one spot of a part to another. */
  boolean driven(int part, int spot, int other) {
    return nodes.driven(spots.own(part, spot), spots.own(part, other));
  }

  /** Current that charges the last of the capacitors that are held (A). */
  double charging() {
    int source = elements.ownSources - 1;
    return elements.sources.get(source).sign * x[nodes.count + source];
  }

  /** A number that tells pieces of metal apart. */
  int metal(int part, int spot) {
    return nodes.metal(spots.own(part, spot));
  }

  boolean driven(Pin pin, int part, int other) {
    return nodes.driven(spots.pin(circuit.plan.pin(pin)), spots.own(part, other));
  }

  /** The level at a pin. */
  public LogicLevel level(Pin pin) {
    return LogicLevel.of(this, pin);
  }

  int metal(Pin pin) {
    return nodes.metal(spots.pin(circuit.plan.pin(pin)));
  }

  /** Voltage of one point against another (V). */
  public double volts(Point plus, Point minus) {
    return volts(plus) - volts(minus);
  }

  /**
   * Current into a part at a pin (A), from the part's law; through closed contacts and twins, which
   * have none, by Kirchhoff's current law, shared as equal resistances would.
   */
  public double current(Pin pin) {
    return currents.value(currents.weights(circuit.plan.pin(pin)));
  }

  /** Power that a part turns to heat (W); negative where it feeds the circuit. */
  public double power(String ref) {
    int part = circuit.plan.part(ref);
    int[] first = circuit.plan.firstPin();
    double watts = 0;
    for (int pin = first[part]; pin < first[part + 1]; pin++) {
      int spot = spots.pin(pin);
      watts += voltsAt(spot) * currents.law(spot);
    }
    return watts;
  }

  /** Whether a point's net has no DC path to the reference, so that its voltage means nothing. */
  public boolean floating(Point point) {
    return nodes.floating(spots.at(point));
  }

  /** Whether a terminal that draws nothing, such as a gate, is on a net that nothing drives. */
  public boolean uncontrolled() {
    for (Elements.Law law : elements.laws) {
      for (int t = 0; t < law.spots.length; t++) {
        if (!law.device.draws(t) && nodes.floating(law.spots[t])) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * What the sources of {@link Edit.Source} deliver out of their plus, in the order of the edits
   * (A).
   */
  public double[] outside() {
    double[] amps = new double[elements.sources.size() - elements.ownSources];
    for (int k = 0; k < amps.length; k++) {
      int source = elements.ownSources + k;
      amps[k] = -elements.sources.get(source).sign * x[nodes.count + source];
    }
    return amps;
  }

  /** The voltage between two points and how it answers to small changes. */
  public Response response(Point plus, Point minus) {
    return adjoint.volts(spots.at(plus), spots.at(minus));
  }

  /** The tones of all generators, each once; every one at that frequency where one is given. */
  public List<SmallSignal.Tone> tones(OptionalDouble hertz) {
    return SmallSignal.tones(elements).stream()
        .map(tone -> new SmallSignal.Tone(hertz.orElse(tone.hertz()), tone.wave()))
        .distinct()
        .toList();
  }

  /**
   * What swings between two points at one of the {@link #tones}, to first order; empty where the
   * equations are singular.
   *
   * @param set whether the generators are set to the tone's frequency, whatever their own
   */
  public Optional<Phasor> swing(Point plus, Point minus, SmallSignal.Tone tone, boolean set) {
    return ComplexEquations.about(elements, nodes, x, 2 * Math.PI * tone.hertz())
        .map(complex -> new SmallSignal(complex, adjoint, tone, set, circuit.values.length))
        .map(signal -> signal.volts(spots.at(plus), spots.at(minus)));
  }

  /** The same over the frequency of all generators, one for each wave, without slopes. */
  public List<Transfer> transfers(Point plus, Point minus) {
    Optional<ComplexEquations> middle = ComplexEquations.about(elements, nodes, x, Transfer.MIDDLE);
    return SmallSignal.tones(elements).stream()
        .map(SmallSignal.Tone::wave)
        .distinct()
        .flatMap(
            wave ->
                middle.stream().map(at -> new Transfer(at, wave, spots.at(plus), spots.at(minus))))
        .toList();
  }

  /** The current into a part at a pin and how it answers to small changes. */
  public Response currentResponse(Pin pin) {
    return adjoint.current(currents, currents.weights(circuit.plan.pin(pin)));
  }

  /**
   * The outcome for a circuit that differs in values alone: it has the same nodes, and what this
   * one is not refused for that one is not either. Empty where a quick search does not find it.
   */
  Optional<Outcome> at(Circuit other) {
    var revalued = new Elements(other, spots);
    nodes.complete(revalued, elements);
    for (int k = 0; k < elements.sources.size(); k++) {
      Elements.Source own = revalued.sources.get(k);
      if (own.sign != elements.sources.get(k).sign) {
        return Optional.empty();
      }
      own.limiting = elements.sources.get(k).limiting;
    }
    return OperatingPointSolver.quick(other, spots, new Equations(revalued, nodes), x.clone());
  }

  /**
   * Copies this point into the unknowns of a circuit of the same parts, where places correspond.
   */
  void copyTo(Spots other, Nodes into, Elements ofOther, double[] unknowns) {
    if (!spots.alike(other)) {
      return;
    }
    for (int spot = 0; spot < other.count; spot++) {
      int node = into.at(spot);
      int own = spots.same(other, spot);
      if (node >= 0 && own >= 0) {
        unknowns[node] = voltsAt(own);
      }
    }
    boolean same = elements.sources.size() == ofOther.sources.size();
    for (int k = 0; same && k < elements.sources.size(); k++) {
      ofOther.sources.get(k).limiting =
          elements.sources.get(k).limiting && ofOther.sources.get(k).limit < Double.MAX_VALUE;
    }
  }
}
