/**
 * Try a build: a page on which a build is typed, checked as it is typed, and marked without being
 * kept.
 */
@NullMarked
package org.holewise.school.trial;

import org.jspecify.annotations.NullMarked;
