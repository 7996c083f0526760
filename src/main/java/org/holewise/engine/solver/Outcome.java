package org.holewise.engine.solver;

/** What solving a circuit comes to. */
public sealed interface Outcome permits OperatingPoint, Unsolvable {}
