/** The application's entry point; everything else is in the packages below. */
@NullMarked
package org.holewise;

import org.jspecify.annotations.NullMarked;
