/** Compares the built netlist with the wanted one and finds the smallest set of repairs. */
@NullMarked
package org.holewise.engine.wiring;

import org.jspecify.annotations.NullMarked;
