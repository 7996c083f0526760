package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/** What a law stamps itself into; the solver implements it. Nodes are small integers. */
public interface Network {

  /** The node at the bare metal of one of the part's own pins. */
  int pin(String name);

  /** Whether any of these pins is on a net with another pin of the circuit, or in a hole. */
  boolean used(List<String> pins);

  /** A new node inside the part. */
  int node();

  /** Temperature of the surroundings (°C). */
  double celsius();

  /**
   * A number that the part has whatever is stamped of it here, so that a part's numbers are the
   * same, and in the same order, on every board.
   */
  void number(Parameter number);

  /** One piece of metal: a closed contact, or twins. */
  void join(int a, int b);

  void resistor(int a, int b, Parameter ohms);

  /** An ideal source of voltage (V); its current is an unknown of the problem. */
  void source(int plus, int minus, Parameter volts);

  /** The same, whose voltage gives way where it would deliver more than {@code limit} (A). */
  void source(int plus, int minus, Parameter volts, double limit);

  /**
   * An ideal source whose voltage swings about {@code offset} by {@code peak} (V) either way.
   *
   * @param hertz how often (Hz)
   */
  void generator(int plus, int minus, Parameter offset, Parameter peak, double hertz, Wave wave);

  /** A capacitance (F): at rest nothing at all. */
  void capacitor(int a, int b, Parameter farads);

  /** An inductance (H): at rest a wire, whose current is an unknown of the problem. */
  void inductor(int a, int b, Parameter henries);

  /** A device whose currents follow from the voltages at its nodes. */
  void device(Device device, int... nodes);

  /**
   * Logic between two supply pins: its inputs at nodes, its outputs driven as it decides. Inputs
   * draw nothing here; what they draw is stamped beside this.
   */
  void logic(Logic logic, int plus, int minus, int[] inputs, Driver... outputs);
}
