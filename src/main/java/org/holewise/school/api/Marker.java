package org.holewise.school.api;

import org.holewise.document.MarkRequest;
import org.holewise.engine.marking.Mark;

/** Marks a build by the shipped table of priors. */
@FunctionalInterface
interface Marker {
  Mark mark(MarkRequest request);
}
