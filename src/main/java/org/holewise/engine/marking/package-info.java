/** The whole road: one call from an exercise and a bench's record to a mark. */
@NullMarked
package org.holewise.engine.marking;

import org.jspecify.annotations.NullMarked;
