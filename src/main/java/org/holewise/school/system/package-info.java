/** What the whole application shares: settings, doors, first start, the frame of pages, errors. */
@NullMarked
package org.holewise.school.system;

import org.jspecify.annotations.NullMarked;
