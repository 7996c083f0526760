package org.holewise.engine.quantity;

import java.util.Optional;

/** What a row of bands says: a resistor, or which band cannot be. Immutable. */
public sealed interface ColourReading permits CodedResistor, ColourReading.NoCode {

  /** The resistor, if it is one. */
  default Optional<CodedResistor> resistor() {
    return this instanceof CodedResistor coded ? Optional.of(coded) : Optional.empty();
  }

  /**
   * Bands that mean nothing.
   *
   * @param band the first band that cannot stand where it does, from 0; the number of bands where
   *     that number itself is wrong
   */
  record NoCode(int band) implements ColourReading {}
}
