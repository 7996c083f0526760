package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Candidate.Effort;
import org.holewise.engine.exercise.Condition;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.exercise.Probe;
import org.holewise.engine.part.Footprint;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/**
 * The readings that could be asked for. Ohms are between points from which the supply can be taken
 * away, so never at its own leads; amperes are in series at its return, so never across anything.
 */
final class Candidates {
  /** Kinds that stay charged when the supply is gone. */
  private static final Set<String> CHARGED = Set.of("capacitor", "electrolytic");

  private static final int MOST_VOLTS = 150;
  private static final int MOST_OHMS = 10;

  private final Scene scene;

  Candidates(Scene scene) {
    this.scene = scene;
  }

  /** Every lead against the reference, and every lead against its own strip, in any condition. */
  List<Candidate> volts() {
    var all = new ArrayList<Candidate>();
    for (Condition condition : scene.exercise().conditions()) {
      for (Measure.Volts volts : measures()) {
        add(all, volts, condition, Effort.VOLTS);
      }
    }
    return affordable(all);
  }

  /** Of more candidates than are worth the time, evenly many along the parts. */
  private static List<Candidate> affordable(List<Candidate> all) {
    int step = 1 + all.size() / MOST_VOLTS;
    return IntStream.iterate(0, i -> i < all.size(), i -> i + step).mapToObj(all::get).toList();
  }

  private List<Measure.Volts> measures() {
    Optional<Pin> reference = sources().stream().findFirst().map(Part::minus);
    var all = new ArrayList<Measure.Volts>();
    for (Pin pin : scene.exercise().pins()) {
      reference
          .filter(black -> !black.equals(pin))
          .ifPresent(black -> all.add(new Measure.Volts(Probe.at(pin), Probe.at(black))));
      strip(pin).ifPresent(free -> all.add(new Measure.Volts(Probe.at(pin), Probe.at(free))));
    }
    return all;
  }

  /** What the supply gives, the meter where the current comes back to it. */
  List<Candidate> amps() {
    var all = new ArrayList<Candidate>();
    for (Condition condition : scene.exercise().conditions()) {
      for (Part source : sources()) {
        Pin minus = source.minus();
        boolean placed = scene.layout().isEmpty() || strip(minus).isPresent();
        if (source.pins().size() == 2 && !source.kind().swings() && placed) {
          add(all, new Measure.Amps(minus), condition, Effort.AMPS);
        }
      }
    }
    return all;
  }

  /**
   * What tells of the likeliest places when the supply is away: a lead and its strip, a part from
   * lead to lead, a link from end to end, two strips, and all that hangs on the supply. Nothing
   * where there are capacitors or chips.
   *
   * @param places likeliest first
   */
  List<Candidate> ohms(List<Place> places) {
    if (scene.exercise().parts().stream().anyMatch(Candidates::unfit)) {
      return List.of();
    }
    Set<Measure.Ohms> measures = new LinkedHashSet<>();
    whole().ifPresent(measures::add);
    places.forEach(place -> at(place).ifPresent(measures::add));
    var all = new ArrayList<Candidate>();
    for (Condition condition : scene.exercise().conditions()) {
      measures.forEach(measure -> add(all, measure, condition, Effort.OHMS));
    }
    return all.subList(0, Math.min(MOST_OHMS, all.size()));
  }

  /** What an ohmmeter must not meet, or through which it tells nothing that is sure. */
  private static boolean unfit(Part part) {
    return CHARGED.contains(part.kind().name())
        || part.kind().footprint(part.fields()) instanceof Footprint.Dip;
  }

  private Optional<Measure.Ohms> whole() {
    return sources().stream()
        .findFirst()
        .flatMap(source -> between(strip(source.pins().get(0)), strip(source.minus())));
  }

  private Optional<Measure.Ohms> at(Place place) {
    if (place instanceof Place.OfLead lead) {
      return strip(lead.pin())
          .filter(free -> !source(lead.pin().ref()))
          .map(free -> ohms(Probe.at(lead.pin()), Probe.at(free)));
    }
    if (place instanceof Place.OfPart part && !source(part.ref())) {
      return scene
          .exercise()
          .part(part.ref())
          .map(Part::pins)
          .filter(pins -> pins.size() == 2)
          .map(pins -> ohms(Probe.at(pins.get(0)), Probe.at(pins.get(1))));
    }
    if (place instanceof Place.OfLink link) {
      return scene
          .layout()
          .map(layout -> layout.links().get(link.link()))
          .flatMap(laid -> between(free(laid.from()), free(laid.to())));
    }
    return place instanceof Place.OfStrips strips
        ? between(free(strips.one()), free(strips.other()))
        : Optional.empty();
  }

  private static Optional<Measure.Ohms> between(Optional<Hole> one, Optional<Hole> other) {
    return one.isPresent() && other.isPresent()
        ? Optional.of(ohms(Probe.at(one.get()), Probe.at(other.get())))
        : Optional.empty();
  }

  private static Measure.Ohms ohms(Probe one, Probe other) {
    return new Measure.Ohms(one, other, false);
  }

  private Optional<Hole> strip(Pin pin) {
    return scene.layout().flatMap(layout -> layout.hole(pin)).flatMap(this::free);
  }

  private Optional<Hole> free(Hole hole) {
    return scene.layout().flatMap(layout -> layout.freeNear(hole));
  }

  private List<Part> sources() {
    return scene.exercise().parts().stream().filter(part -> part.kind().source()).toList();
  }

  private boolean source(String ref) {
    return sources().stream().anyMatch(part -> part.ref().equals(ref));
  }

  private void add(List<Candidate> all, Measure measure, Condition condition, Effort effort) {
    boolean taken =
        scene.observations().stream()
            .anyMatch(
                o -> o.measure().equals(measure) && o.condition().name().equals(condition.name()));
    if (!taken) {
      all.add(new Candidate(measure, condition, effort));
    }
  }
}
