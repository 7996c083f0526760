package org.holewise.engine.part;

/**
 * What one pin of a part is for, as far as a drawing of it has to know.
 *
 * @param pin as an exercise writes it
 * @param name as the data sheet has it; the pin's own where it has no other
 */
public record Leg(String pin, String name, Role role) {

  /** Which side of a symbol a pin belongs to: inputs left, outputs right, supply top and bottom. */
  public enum Role {
    PLAIN,
    INPUT,
    OUTPUT,
    PLUS,
    MINUS,
    UNUSED
  }

  static Leg plain(String pin) {
    return new Leg(pin, pin, Role.PLAIN);
  }
}
