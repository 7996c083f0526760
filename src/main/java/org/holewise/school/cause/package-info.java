/** What a school's known causes say of the fault finder: how often it was right, what it learnt. */
@NullMarked
package org.holewise.school.cause;

import org.jspecify.annotations.NullMarked;
