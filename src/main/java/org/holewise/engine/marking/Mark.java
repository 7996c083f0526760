package org.holewise.engine.marking;

import java.util.List;
import org.holewise.engine.board.Finding;
import org.holewise.engine.diagnosis.Diagnosis;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.wiring.WiringReport;

/** The teacher's view of a marked build. Immutable. */
public record Mark(
    String engine,
    String priors,
    List<Finding> findings,
    WiringReport wiring,
    List<Judged> readings,
    Diagnosis diagnosis,
    List<Caution> cautions,
    Points marks) {}
