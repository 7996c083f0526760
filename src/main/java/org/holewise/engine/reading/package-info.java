/**
 * What an instrument shows, between which limits a sound build may read, and the verdict on what
 * was read.
 */
@NullMarked
package org.holewise.engine.reading;

import org.jspecify.annotations.NullMarked;
