package org.holewise.document.shape;

import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * What may stand at a place of a document. Reading and schema come from the same object, so that
 * they agree wherever a schema can say it. Immutable.
 *
 * @param <T> what it is read as
 */
public interface Shape<T> {

  /**
   * Reads a place, and names every wrong place in it. A container that is wrong only inside is read
   * as far as it goes; whoever reads a whole document looks at the problems before using it.
   */
  Optional<T> read(Place place);

  /** JSON Schema, draft 2020-12; a new node each time. */
  ObjectNode schema();
}
