/**
 * The board with a build on it as a drawing: shapes and texts with their places, ready to be
 * written as SVG.
 */
@NullMarked
package org.holewise.document.picture;

import org.jspecify.annotations.NullMarked;
