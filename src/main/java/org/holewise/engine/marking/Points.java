package org.holewise.engine.marking;

/** Marks earned; {@code held}: wiring marks wait for the teacher. */
public record Points(int wiring, int readings, int of, boolean held) {
  public int total() {
    return wiring + readings;
  }
}
