package org.holewise.engine.exercise;

/** The scheme of marks: how many for the wiring, how many for the readings. */
public record Scheme(int wiring, int readings) {
  public static final Scheme USUAL = new Scheme(60, 40);

  public int total() {
    return wiring + readings;
  }
}
