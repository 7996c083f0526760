/** A student's pages: today's benches, the working page of a bench, a hand-in with its hints. */
@NullMarked
package org.holewise.school.bench;

import org.jspecify.annotations.NullMarked;
