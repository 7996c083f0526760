/**
 * Kinds of parts: their pins, fields and defaults, footprint, limits and law, and the registry of
 * them.
 */
@NullMarked
package org.holewise.engine.part;

import org.jspecify.annotations.NullMarked;
