package org.holewise.engine.diagnosis;

import java.util.List;

/** Lists what may be wrong with a scene in one respect. */
interface FaultRule {
  List<Hypothesis> of(Scene scene);
}
