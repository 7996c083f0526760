/** The symbols of parts: strokes and pins, from the general forms of IEC 60617 and ANSI Y32.2. */
@NullMarked
package org.holewise.drawing.symbol;

import org.jspecify.annotations.NullMarked;
