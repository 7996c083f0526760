/** The store: what it holds, what went where, what sessions need, and what to order. */
@NullMarked
package org.holewise.school.store;

import org.jspecify.annotations.NullMarked;
