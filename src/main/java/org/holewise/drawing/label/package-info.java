/** Texts beside symbols: each part's ref and value, where nothing else is. */
@NullMarked
package org.holewise.drawing.label;

import org.jspecify.annotations.NullMarked;
