package org.holewise.engine.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Reading;
import org.holewise.engine.exercise.Written;
import org.holewise.engine.netlist.Schematic;

/**
 * Judges an exercise's readings against the circuit as built, so that a right measurement of a
 * wrong build earns its marks. Readings are conditioned on the supply where it was measured; a
 * supply's own reading is judged by itself.
 */
public final class Judge {
  private final Exercise exercise;
  private final Instrument instrument;
  private final Map<String, Taken> taken = new LinkedHashMap<>();

  public Judge(Exercise exercise, Meter meter, Map<String, Written> readings) {
    this.exercise = exercise;
    this.instrument = new Instrument(meter);
    for (Reading reading : exercise.readings()) {
      Written written = readings.get(reading.id());
      if (written != null) {
        taken.put(reading.id(), Taken.of(reading.measure(), written, meter));
      }
    }
  }

  /** All readings of the exercise, in its order. */
  public List<Judged> judge(Assembly wanted, Assembly asBuilt) {
    Map<String, Expected> should = expected(wanted);
    Map<String, Expected> does = asBuilt.same(wanted) ? should : expected(asBuilt);
    var judged = new ArrayList<Judged>();
    for (Reading reading : exercise.readings()) {
      var by = Optional.ofNullable(does.get(reading.id()));
      var instead = Optional.ofNullable(should.get(reading.id()));
      Taken what = taken.getOrDefault(reading.id(), Taken.MISSING);
      judged.add(
          new Judged(
              reading,
              what.shown(),
              what.unreadable(),
              instead,
              by,
              verdict(reading, what, by.or(() -> instead))));
    }
    return judged;
  }

  /** What each reading should be on an assembly; those of a circuit without solution left out. */
  private Map<String, Expected> expected(Assembly assembly) {
    Bench bench = Bench.of(assembly);
    var uncertainty = Uncertainty.of(bench.parameters(), instrument.meter());
    var shift = Supplies.shift(bench, instrument, uncertainty, taken);
    var knowing = new Bands(bench, instrument, uncertainty, shift);
    Bands alone = knowing.without(bench);
    var all = new LinkedHashMap<String, Expected>();
    for (Reading reading : exercise.readings()) {
      boolean supply = Supplies.measuredBy(reading, exercise, assembly.netlist()).isPresent();
      (supply ? alone : knowing)
          .expected(reading.measure(), exercise.condition(reading.occasion()))
          .ifPresent(expected -> all.put(reading.id(), expected));
    }
    return all;
  }

  private Verdict verdict(Reading reading, Taken what, Optional<Expected> expected) {
    if (what.unreadable().isPresent()) {
      return Verdict.UNREADABLE;
    }
    if (what.shown().isEmpty()) {
      return Verdict.MISSING;
    }
    if (reading.band().isPresent() && what.shown().get() instanceof Shown.Amount amount) {
      var band = reading.band().get();
      return amount.value() >= band.low() && amount.value() <= band.high()
          ? Verdict.WITHIN
          : Verdict.OUTSIDE;
    }
    return expected
        .map(by -> verdict(reading, what, what.shown().get(), by))
        .orElse(Verdict.OUTSIDE);
  }

  private Verdict verdict(Reading reading, Taken what, Shown shown, Expected by) {
    if (shown instanceof Shown.OverRange) {
      return by.shown() instanceof Shown.OverRange ? Verdict.WITHIN : Verdict.OVER_RANGE;
    }
    if (shown instanceof Shown.Amount amount) {
      return by.shown() instanceof Shown.Amount
          ? amount(reading, what, amount.value(), by)
          : Verdict.OUTSIDE;
    }
    return word(reading, ((Shown.Word) shown).word(), by);
  }

  /**
   * Beyond the worst case a supply's own reading has half as much again: a tired battery is not the
   * builder's slip, and the fault finder speaks of it.
   */
  private double tired(Reading reading, Expected by) {
    boolean supply =
        Supplies.measuredBy(reading, exercise, Schematic.netlist(exercise)).isPresent();
    return supply ? (by.worstHigh() - by.worstLow()) / 4 : 0;
  }

  private Verdict amount(Reading reading, Taken what, double value, Expected by) {
    double coarser = what.coarser(reading.measure(), instrument.meter());
    if (value >= by.low() - coarser && value <= by.high() + coarser) {
      return Verdict.WITHIN;
    }
    double limit =
        instrument.meter().limit(Taken.function(reading.measure()), value)
            + by.own()
            + coarser
            + tired(reading, by);
    return value >= by.worstLow() - limit && value <= by.worstHigh() + limit
        ? Verdict.UNUSUAL
        : Verdict.OUTSIDE;
  }

  /** A word fits where any value inside the band, or the worst case, would have been called so. */
  private Verdict word(Reading reading, String word, Expected by) {
    boolean flickers = by.shown().equals(new Shown.Word(Forecast.FLICKERING));
    Forecast.Sort sort = flickers ? Forecast.Sort.FLICKER : Forecast.sort(reading.measure());
    if (Forecast.words(sort, by.low(), by.high(), instrument.meter()).contains(word)) {
      return Verdict.WITHIN;
    }
    return Forecast.words(sort, by.worstLow(), by.worstHigh(), instrument.meter()).contains(word)
        ? Verdict.UNUSUAL
        : Verdict.OUTSIDE;
  }
}
