/**
 * A build as typed lines, the equal of a document: reads them, keeps what is wrong beside its line,
 * prints them.
 */
@NullMarked
package org.holewise.document.lines;

import org.jspecify.annotations.NullMarked;
