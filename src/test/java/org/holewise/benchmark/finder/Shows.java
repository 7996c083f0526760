package org.holewise.benchmark.finder;

import java.util.ArrayList;
import java.util.List;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Bench;
import org.holewise.engine.reading.Forecast;
import org.holewise.engine.reading.Instrument;
import org.holewise.engine.reading.Meters;

/** Whether a fault changes any reading or any voltage that could be asked for. */
final class Shows {
  /** A change below this part of a voltage is lost among tolerances, and below this many volts. */
  private static final double SHARE = 0.01;

  private static final double VOLTS = 5e-3;

  private record Question(Measure measure, Condition condition) {}

  private final List<Question> questions = new ArrayList<>();
  private final double[] sound;
  private final int readings;

  Shows(Setup setup) {
    for (Reading reading : setup.exercise().readings()) {
      questions.add(
          new Question(reading.measure(), setup.exercise().condition(reading.occasion())));
    }
    readings = questions.size();
    Pin black = setup.exercise().parts().get(0).pins().get(1);
    for (Condition condition : setup.exercise().conditions()) {
      for (Pin pin : setup.exercise().pins()) {
        setup
            .build()
            .placed(pin.ref())
            .flatMap(placed -> placed.hole(pin.name()))
            .ifPresent(
                hole -> {
                  questions.add(volts(Probe.at(pin), Probe.at(black), condition));
                  questions.add(volts(Probe.at(pin), Probe.at(hole), condition));
                });
      }
    }
    sound = values(new Tampered(setup.exercise(), setup.build()).truth());
  }

  private static Question volts(Probe red, Probe black, Condition condition) {
    return new Question(new Measure.Volts(red, black), condition);
  }

  boolean of(Truth truth) {
    return apart(values(truth), sound, sound.length);
  }

  /** Whether two benches differ in one of the exercise's own readings. */
  boolean inReadings(Truth one, Truth other) {
    return apart(values(one), values(other), readings);
  }

  private boolean apart(double[] one, double[] other, int first) {
    for (int i = 0; i < first; i++) {
      if (Math.abs(one[i] - other[i]) > SHARE * Math.abs(other[i]) + VOLTS
          && !(questions.get(i).measure() instanceof Measure.Amps)) {
        return true;
      }
    }
    return false;
  }

  private double[] values(Truth truth) {
    var instrument = new Instrument(Meters.named(truth.parts().meter()).orElseThrow());
    var bench = Bench.of(truth.assembly());
    double[] values = new double[questions.size()];
    for (int i = 0; i < values.length; i++) {
      Condition condition = questions.get(i).condition();
      values[i] =
          truth
              .really(questions.get(i).measure())
              .flatMap(measure -> instrument.read(bench, measure, condition))
              .map(Forecast::value)
              .orElse(0.0);
    }
    return values;
  }
}
