package org.holewise.document;

import java.util.Optional;
import org.holewise.engine.part.Part;

/**
 * What could be read of a part.
 *
 * @param at JSON pointer to it
 * @param part only where nothing about it was wrong
 */
record DeclaredPart(String at, Optional<String> ref, Optional<Part> part) {}
