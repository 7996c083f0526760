/** Where symbols stand: columns of current between rails, rows of signal from left to right. */
@NullMarked
package org.holewise.drawing.place;

import org.jspecify.annotations.NullMarked;
