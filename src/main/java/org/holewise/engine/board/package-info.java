/** Board models, holes and strips, a build laid out on them, and what is odd about it. */
@NullMarked
package org.holewise.engine.board;

import org.jspecify.annotations.NullMarked;
