package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.engine.diagnosis.Priors.Family;

/** All that may be wrong with a scene, each with its prior. */
final class Hypotheses {
  private static final List<FaultRule> RULES =
      List.of(
          PlaceFaults::ofLeads,
          PlaceFaults::ofLinkEnds,
          EntryFaults::ofEntry,
          ContactFaults::ofLeads,
          ContactFaults::ofLinks,
          ContactFaults::ofBridges,
          PartFaults::wrongValue,
          ExchangedParts::of,
          PartFaults::reversed,
          PartFaults::swappedPins,
          ChipFaults::of,
          ChipFaults::bouncing,
          DeadParts::of,
          StripFaults::touching,
          StripFaults::leftover,
          RailFaults::hiddenGaps,
          SupplyFaults::off,
          SupplyFaults::low,
          SupplyFaults::reversed,
          SupplyFaults::limit,
          MeterFaults::ofReadings,
          MeterFaults::exchanged);

  private Hypotheses() {}

  /** A hypothesis and its prior probability; nothing wrong has none of the families. */
  record Weighed(Optional<Hypothesis> fault, double prior) {}

  static List<Weighed> of(Scene scene, Priors priors) {
    var faults = new ArrayList<Hypothesis>();
    for (FaultRule rule : RULES) {
      faults.addAll(rule.of(scene));
    }
    Map<Family, Map<Place, Double>> weights = new LinkedHashMap<>();
    for (Hypothesis fault : faults) {
      weights
          .computeIfAbsent(fault.family(), family -> new LinkedHashMap<>())
          .merge(fault.place(), fault.share(), Double::sum);
    }
    double present = weights.keySet().stream().mapToDouble(priors::share).sum();
    var all = new ArrayList<Weighed>();
    all.add(new Weighed(Optional.empty(), present > 0 ? priors.sound() : 1));
    for (Hypothesis fault : faults) {
      Map<Place, Double> places = weights.getOrDefault(fault.family(), Map.of());
      double family = (1 - priors.sound()) * priors.share(fault.family()) / present;
      double place = places.getOrDefault(fault.place(), 1.0);
      all.add(new Weighed(Optional.of(fault), family / places.size() * fault.share() / place));
    }
    return all;
  }
}
