package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.holewise.engine.board.BuildCheck;
import org.holewise.engine.board.Finding;
import org.holewise.engine.diagnosis.Diagnosis;
import org.holewise.engine.diagnosis.FaultFinder;
import org.holewise.engine.diagnosis.Layout;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.diagnosis.Scene;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.netlist.Schematic;
import org.holewise.engine.reading.Assembly;
import org.holewise.engine.reading.Judge;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Meters;
import org.holewise.engine.wiring.WiringComparison;
import org.holewise.engine.wiring.WiringReport;

/**
 * The whole road from an exercise and a bench's record to a mark: extract, compare, solve, judge,
 * find the fault, count. A pure function: the same arguments and the same engine version give the
 * same mark. Score, verdicts and differences do not depend on the priors.
 */
public final class Marking {

  private Marking() {}

  /**
   * @param ask kinds of reading that may be asked for next, such as {@code volts}; empty for all
   */
  public static Mark mark(Exercise exercise, BenchRecord record, Priors priors, Set<String> ask) {
    Meter meter =
        Meters.named(record.meter())
            .orElseThrow(() -> new IllegalArgumentException("no meter " + record.meter()));
    Assembly wanted = wanted(exercise);
    Optional<Layout> layout = layout(exercise, record);
    var marked = MarkedValues.of(exercise, record);
    Assembly asBuilt = marked.on(layout.map(built -> on(exercise, built)).orElse(wanted));
    WiringReport wiring =
        record
            .build()
            .map(build -> WiringComparison.compare(exercise, build))
            .orElse(new WiringReport(false, 0, List.of()));
    var judge = new Judge(exercise, meter, record.readings());
    List<Judged> readings = judge.judge(wanted, asBuilt);
    boolean doubtful =
        layout.isPresent() && !wiring.matches() && entryDoubtful(judge, readings, wanted);
    var scene =
        new Scene(
            exercise,
            layout,
            asBuilt,
            wanted,
            wiring,
            Observations.of(exercise, record, meter, readings));
    Diagnosis diagnosis = FaultFinder.find(scene, meter, priors, ask);
    List<Judged> counted = doubtful ? judge.judge(wanted, wanted) : readings;
    return new Mark(
        Engine.VERSION,
        priors.name(),
        findings(exercise, record, marked, doubtful, asBuilt, wiring),
        wiring,
        counted,
        diagnosis,
        Cautions.of(asBuilt),
        Counting.points(exercise, wiring, counted, doubtful));
  }

  /**
   * What a layout would do to its parts or to the person at it in any condition of the exercise,
   * readings left out of account; of the schematic's circuit where no layout is entered.
   */
  public static List<Caution> cautions(Exercise exercise, BenchRecord record) {
    return Cautions.of(asBuilt(exercise, record));
  }

  /** The schematic's circuit. */
  static Assembly wanted(Exercise exercise) {
    return Assembly.of(exercise, Schematic.netlist(exercise), Assembly.HoleNets.NONE);
  }

  /** The circuit that was entered; the schematic's where no layout is. */
  static Assembly asBuilt(Exercise exercise, BenchRecord record) {
    return MarkedValues.of(exercise, record)
        .on(
            layout(exercise, record)
                .map(built -> on(exercise, built))
                .orElseGet(() -> wanted(exercise)));
  }

  private static Optional<Layout> layout(Exercise exercise, BenchRecord record) {
    return record.build().map(build -> Layout.of(build, exercise.parts()));
  }

  private static Assembly on(Exercise exercise, Layout layout) {
    return Assembly.of(exercise, layout.nets().netlist(), layout.nets()::netAt);
  }

  /**
   * Whether the readings fit the schematic and contradict the layout as entered: then the build was
   * probably right and its entry wrong.
   */
  private static boolean entryDoubtful(Judge judge, List<Judged> readings, Assembly wanted) {
    List<Judged> bySchematic = judge.judge(wanted, wanted);
    long contradicting =
        readings.stream().filter(r -> r.measured().isPresent() && !r.verdict().earns()).count();
    long measured = readings.stream().filter(r -> r.measured().isPresent()).count();
    boolean fits =
        bySchematic.stream()
            .filter(r -> r.measured().isPresent())
            .allMatch(r -> r.verdict().earns());
    return fits && contradicting > 0 && measured > 1;
  }

  private static List<Finding> findings(
      Exercise exercise,
      BenchRecord record,
      MarkedValues marked,
      boolean doubtful,
      Assembly asBuilt,
      WiringReport wiring) {
    var findings = new ArrayList<Finding>();
    if (record.build().isEmpty()) {
      findings.add(Finding.of("/build", "layout-missing"));
    }
    record
        .build()
        .ifPresent(build -> findings.addAll(BuildCheck.findings(build, exercise.parts())));
    findings.addAll(marked.findings());
    findings.addAll(ChipFindings.of(wiring, record));
    findings.addAll(LogicFindings.of(asBuilt, record));
    if (doubtful) {
      findings.add(Finding.of("/build/placed", "layout-doubtful"));
    }
    return findings;
  }
}
