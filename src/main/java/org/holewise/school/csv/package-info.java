/** Tables as files that a spreadsheet opens. */
@NullMarked
package org.holewise.school.csv;

import org.jspecify.annotations.NullMarked;
