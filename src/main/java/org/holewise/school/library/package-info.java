/** The exercises of a school. */
@NullMarked
package org.holewise.school.library;

import org.jspecify.annotations.NullMarked;
