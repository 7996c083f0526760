/** Values with units: read and printed as people write them, preferred series, codes, spreads. */
@NullMarked
package org.holewise.engine.quantity;

import org.jspecify.annotations.NullMarked;
