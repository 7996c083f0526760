package org.holewise.engine.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.engine.diagnosis.Observation;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Extra;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Occasion;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.reading.Expected;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Meter;
import org.holewise.engine.reading.Shown;
import org.holewise.engine.reading.Taken;

/** All readings of a record that can be understood, those that were asked for included. */
final class Observations {
  private final Exercise exercise;
  private final Meter meter;
  private final List<Observation> all = new ArrayList<>();

  private Observations(Exercise exercise, Meter meter) {
    this.exercise = exercise;
    this.meter = meter;
  }

  /**
   * @param judged the exercise's readings, judged as built
   */
  static List<Observation> of(
      Exercise exercise, BenchRecord record, Meter meter, List<Judged> judged) {
    var observations = new Observations(exercise, meter);
    for (Reading reading : exercise.readings()) {
      Written written = record.readings().get(reading.id());
      if (written != null) {
        Optional<Shown> asBuilt =
            judged.stream()
                .filter(one -> one.reading().id().equals(reading.id()))
                .findFirst()
                .flatMap(Judged::asBuilt)
                .map(Expected::shown);
        observations.add(reading.id(), reading.measure(), reading.occasion(), written, asBuilt);
      }
    }
    for (Extra extra : record.extra()) {
      observations.add(
          extra.id(), extra.measure(), extra.occasion(), extra.value(), Optional.empty());
    }
    return observations.all;
  }

  private void add(
      String id, Measure measure, Occasion occasion, Written written, Optional<Shown> asBuilt) {
    Taken taken = Taken.of(measure, written, meter);
    taken
        .shown()
        .ifPresent(
            shown ->
                all.add(
                    new Observation(
                        id,
                        measure,
                        exercise.condition(occasion),
                        shown,
                        taken.coarser(measure, meter),
                        asBuilt)));
  }
}
