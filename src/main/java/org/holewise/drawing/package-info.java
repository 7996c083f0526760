/** Draws a schematic: from parts and nets to a drawing as data, or to why there is none. */
@NullMarked
package org.holewise.drawing;

import org.jspecify.annotations.NullMarked;
