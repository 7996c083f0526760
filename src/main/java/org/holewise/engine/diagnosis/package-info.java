/**
 * Ranks what may be wrong with a build by how well it explains the readings, and asks for the next
 * one.
 */
@NullMarked
package org.holewise.engine.diagnosis;

import org.jspecify.annotations.NullMarked;
