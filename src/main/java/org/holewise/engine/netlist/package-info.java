/** Turns a schematic or a build into nets that remember which holes made them. */
@NullMarked
package org.holewise.engine.netlist;

import org.jspecify.annotations.NullMarked;
