package org.holewise.engine.diagnosis;

import java.util.List;
import java.util.Optional;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.wiring.WiringReport;

/**
 * What the fault finder looks at. Immutable.
 *
 * @param layout empty where only the schematic is known
 * @param record the assembly as recorded; the schematic's where there is no layout
 * @param wanted the assembly that the schematic describes
 * @param wiring how the layout differs from the schematic
 * @param observations what was read of it
 */
public record Scene(
    Exercise exercise,
    Optional<Layout> layout,
    Assembly record,
    Assembly wanted,
    WiringReport wiring,
    List<Observation> observations) {
  public Scene {
    observations = List.copyOf(observations);
  }
}
