/**
 * What may stand where in a document: each shape reads a place, names every wrong spot, and gives
 * its schema.
 */
@NullMarked
package org.holewise.document.shape;

import org.jspecify.annotations.NullMarked;
