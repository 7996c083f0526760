package org.holewise.engine.part;

import java.util.List;
import org.holewise.engine.quantity.Parameter;

/**
 * A device without memory: the currents into its terminals follow from the voltages at them and
 * from its parameters. Stateless; the arrays belong to the caller.
 */
public interface Device {

  int terminals();

  /** Its uncertain numbers, in the order of {@code p} below. */
  List<Parameter> parameters();

  /**
   * Currents and slopes at a point.
   *
   * @param v voltage of each terminal (V)
   * @param p value of each parameter (SI)
   * @param i out: current into each terminal (A); they sum to zero
   * @param dv out: terminals by terminals, row-major: di/dv (S)
   * @param dp out: terminals by parameters, row-major: di/dp
   */
  void evaluate(double[] v, double[] p, double[] i, double[] dv, double[] dp);

  /**
   * Holds a Newton step back where the exponential would overflow: changes {@code v} towards {@code
   * last} where needed.
   *
   * @return whether it held back
   */
  boolean limit(double[] v, double[] last, double[] p);

  /** Whether a terminal may draw current; one that does not is no path for direct current. */
  default boolean draws(int terminal) {
    return true;
  }

  /** Whether its currents are exponentials of its voltages, and rounded as such. */
  default boolean exponential() {
    return true;
  }

  /**
   * Whether its output may settle at more than one place. {@code side} says at which end of its
   * range a search should begin: −1 or 1.
   */
  default boolean amplifies() {
    return false;
  }

  /** As {@link #start}, at an end of the range of what amplifies. */
  default void start(double[] v, double[] p, int side) {
    start(v, p);
  }

  /** Whether current of any size can go in at one terminal and out at another. */
  default boolean carries(int in, int out) {
    return true;
  }

  /** Changes {@code v} to where a search from nothing should begin, such as a junction's bend. */
  default void start(double[] v, double[] p) {}

  /** Whether a wire with nothing but this at it counts as driven; an input's own load does not. */
  default boolean drives() {
    return true;
  }
}
