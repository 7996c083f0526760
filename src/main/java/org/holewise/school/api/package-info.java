/** The JSON API: marks for programs, and the schemas of the documents. */
@NullMarked
package org.holewise.school.api;

import org.jspecify.annotations.NullMarked;
