/**
 * An exercise as values: parts, nets, conditions, readings and the scheme of marks; and what a
 * bench recorded for it.
 */
@NullMarked
package org.holewise.engine.exercise;

import org.jspecify.annotations.NullMarked;
