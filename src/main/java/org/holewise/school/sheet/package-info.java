/** What an exercise, a board with a build and a mark look like on any page. */
@NullMarked
package org.holewise.school.sheet;

import org.jspecify.annotations.NullMarked;
