/** Lab sessions: which class builds what on which day, at which benches, and who works there. */
@NullMarked
package org.holewise.school.session;

import org.jspecify.annotations.NullMarked;
