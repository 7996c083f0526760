package org.holewise.drawing.route;

import java.util.List;
import java.util.OptionalInt;
import org.holewise.drawing.sheet.Point;

/**
 * Ends that wires are to join: all of a net, or those of a net that one of its symbols serves.
 *
 * @param net its number
 * @param ends pins and symbols
 * @param line height of a line to lead it to, where there is one
 */
record Strand(int net, List<Point> ends, OptionalInt line) {}
