/** Reads exercises, builds and requests, writes marks, and publishes the schema of each. */
@NullMarked
package org.holewise.document;

import org.jspecify.annotations.NullMarked;
