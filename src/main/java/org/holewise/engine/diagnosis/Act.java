package org.holewise.engine.diagnosis;

import java.util.List;
import org.holewise.engine.board.Hole;

/** Something to do that tests or mends a place. {@code kind} such as {@code press-home}. */
public record Act(String kind, Place place, List<Hole> holes, double minutes) {}
