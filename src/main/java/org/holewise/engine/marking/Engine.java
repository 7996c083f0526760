package org.holewise.engine.marking;

/** The engine's version: golden marks pin it, so it changes whenever a mark does. */
public final class Engine {
  public static final String VERSION = "1.2.0";

  private Engine() {}
}
