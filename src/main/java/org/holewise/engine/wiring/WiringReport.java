package org.holewise.engine.wiring;

import java.util.List;

/**
 * How a build's wiring compares with the schematic.
 *
 * @param matches whether there is nothing to repair
 * @param score max(0, 1 − cost / leads of the schematic)
 * @param differences the smallest set of repairs
 */
public record WiringReport(boolean matches, double score, List<Difference> differences) {}
