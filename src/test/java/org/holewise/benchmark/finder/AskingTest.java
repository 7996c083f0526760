package org.holewise.benchmark.finder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.holewise.benchmark.finder.Visit.Value;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Priors;
import org.holewise.engine.exercise.BenchRecord;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.marking.Marking;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.reading.Meters;
import org.junit.jupiter.api.Test;

/** What is asked for next, of many builds with faults: never what could hurt, the easiest first. */
class AskingTest {
  private static final int BUILDS = 5;

  private final Random random = new Random(5);
  private final Map<String, Integer> asked = new TreeMap<>();

  /** A build with a fault, and its readings. */
  private record Case(Setup setup, Map<String, Value> read) {
    Optional<NextReading> next(String... ask) {
      Map<String, Written> written = new LinkedHashMap<>();
      read.forEach((id, value) -> written.put(id, Written.text(value.text())));
      Exercise exercise = setup.exercise();
      var record =
          new BenchRecord(
              exercise.slug(), exercise.meter(), Optional.of(setup.build()), written, List.of());
      return Marking.mark(exercise, record, Priors.start(), Set.of(ask)).diagnosis().next();
    }
  }

  private Case drawn(Setup setup, List<Ailment> ailments) {
    Ailment ailment = ailments.get(1 + random.nextInt(ailments.size() - 1));
    var visit = new Visit(ailment.truth(setup, random), random);
    var meter = Meters.named(setup.exercise().meter()).orElseThrow();
    return new Case(setup, Slips.slipped(ailment.slip(), visit.readings(), meter, random));
  }

  @Test
  void isNeverForbiddenAndTheEasiestOfNearlyEqual() {
    for (Setup setup : Setup.five().subList(0, 4)) {
      List<Ailment> ailments = Ailments.of(setup);
      for (int i = 0; i < BUILDS; i++) {
        Case drawn = drawn(setup, ailments);
        Optional<NextReading> any = drawn.next();
        any.ifPresent(next -> allowed(setup.exercise(), next));
        Optional<NextReading> volts = drawn.next("volts");
        assertThat(volts.stream().map(next -> next.measure().key())).allMatch("volts"::equals);
        if (any.isPresent() && any.get().measure() instanceof Measure.Volts) {
          assertThat(any).isEqualTo(volts);
        } else {
          assertThat(volts.map(NextReading::gain).orElse(0.0))
              .isLessThanOrEqualTo(any.map(NextReading::gain).orElse(0.0));
        }
        for (String kind : List.of("ohms", "amps")) {
          drawn
              .next(kind)
              .ifPresent(
                  next -> {
                    assertThat(next.measure().key()).isEqualTo(kind);
                    allowed(setup.exercise(), next);
                  });
        }
      }
    }
    assertThat(asked).containsOnlyKeys("amps", "ohms", "volts");
  }

  private void allowed(Exercise exercise, NextReading next) {
    Measure measure = next.measure();
    asked.merge(measure.key(), 1, Integer::sum);
    assertThat(next.gain()).isGreaterThanOrEqualTo(0.05);
    if (measure instanceof Measure.Amps amps) {
      assertThat(amps.pin()).isEqualTo(new Pin(amps.pin().ref(), "-"));
      assertThat(source(exercise, amps.pin())).isTrue();
    } else if (measure instanceof Measure.Ohms ohms) {
      assertThat(ohms.alone()).isFalse();
      assertThat(ohms.points())
          .noneMatch(point -> point instanceof Probe.AtPin at && source(exercise, at.pin()));
    } else {
      assertThat(measure).isInstanceOf(Measure.Volts.class);
    }
  }

  private static boolean source(Exercise exercise, Pin pin) {
    return exercise.part(pin.ref()).map(Part::kind).filter(kind -> kind.source()).isPresent();
  }
}
