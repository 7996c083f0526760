/** A finished drawing as data: figures, wires, dots and texts with their places. */
@NullMarked
package org.holewise.drawing.sheet;

import org.jspecify.annotations.NullMarked;
