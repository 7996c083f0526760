/**
 * Wires between placed symbols: level and upright, round bodies, crossing straight or not at all.
 */
@NullMarked
package org.holewise.drawing.route;

import org.jspecify.annotations.NullMarked;
