/** Solves a circuit: operating point, sensitivities, and the answer to edits of it. */
@NullMarked
package org.holewise.engine.solver;

import org.jspecify.annotations.NullMarked;
