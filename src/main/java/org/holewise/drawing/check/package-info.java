/** The laws of a drawing, and the netlist read back from it: by what it shows alone. */
@NullMarked
package org.holewise.drawing.check;

import org.jspecify.annotations.NullMarked;
