package org.holewise.engine.netlist;

import java.util.List;
import org.holewise.engine.part.Pin;

/**
 * One net.
 *
 * @param name the schematic's name, or for a build one made from its first pin or hole
 * @param pins in document order
 * @param strips numbers of the strips that make it, ascending; empty for a schematic's net
 */
public record BuiltNet(String name, List<Pin> pins, List<Integer> strips) {}
