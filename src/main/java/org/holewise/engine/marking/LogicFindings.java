package org.holewise.engine.marking;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.Finding;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.solver.Settled;

/**
 * What is odd about how a circuit's logic comes to rest, in any of its conditions: {@code
 * outputs-clash} (pin, pin): two outputs on one wire drive against each other; {@code oscillates}
 * (pin): an output that nothing slows down never comes to rest.
 */
final class LogicFindings {
  private LogicFindings() {}

  static Set<Finding> of(Assembly asBuilt, BenchRecord record) {
    var findings = new LinkedHashSet<Finding>();
    Bench bench = Bench.of(asBuilt);
    for (Condition condition : asBuilt.exercise().conditions()) {
      Optional<Settled> settled = bench.settled(condition);
      settled
          .map(Settled::clashes)
          .orElse(List.of())
          .forEach(
              clash ->
                  findings.add(
                      Finding.of(
                          ChipFindings.at(record, clash.high().ref()),
                          "outputs-clash",
                          clash.high(),
                          clash.low())));
      settled
          .map(Settled::swinging)
          .orElse(Set.of())
          .forEach(
              pin ->
                  findings.add(Finding.of(ChipFindings.at(record, pin.ref()), "oscillates", pin)));
    }
    return findings;
  }
}
