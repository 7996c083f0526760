/** Renders the keys of findings, repairs, verdicts, suspects and problems in words. */
@NullMarked
package org.holewise.document.text;

import org.jspecify.annotations.NullMarked;
