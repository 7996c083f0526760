/** The teacher's pages: sessions, the room as it is now, each bench, and the marks of a class. */
@NullMarked
package org.holewise.school.room;

import org.jspecify.annotations.NullMarked;
