/** Class groups, their students, and the cards by which students come in. */
@NullMarked
package org.holewise.school.roster;

import org.jspecify.annotations.NullMarked;
