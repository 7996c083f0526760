/** What is to be drawn: parts, nets, and where an author wants parts to stand. */
@NullMarked
package org.holewise.drawing.circuit;

import org.jspecify.annotations.NullMarked;
