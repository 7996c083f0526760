/** The demo: a class in the middle of a lesson, with the lessons before and after it. */
@NullMarked
package org.holewise.school.demo;

import org.jspecify.annotations.NullMarked;
