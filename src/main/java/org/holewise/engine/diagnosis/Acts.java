package org.holewise.engine.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What to do about the likeliest places; how long each takes is common practice at a bench. */
final class Acts {
  /** Places less likely than this are not worth an act yet. */
  private static final double LEAST = 0.05;

  private static final int MOST = 4;

  private record Task(String act, double minutes) {}

  private static final Map<String, List<Task>> BY_KIND = byKind();

  private Acts() {}

  private static Map<String, List<Task>> byKind() {
    Map<String, List<Task>> tasks = new LinkedHashMap<>();
    tasks.put("open-contact", List.of(new Task("press-home", 0.2), new Task("other-hole", 0.5)));
    tasks.put("poor-contact", List.of(new Task("press-home", 0.2), new Task("other-hole", 0.5)));
    tasks.put("wrong-hole", List.of(new Task("move-lead", 0.3)));
    tasks.put("leftover", List.of(new Task("take-out", 0.3)));
    tasks.put("rail-gap", List.of(new Task("bridge-gap", 0.5)));
    tasks.put("swapped-parts", List.of(new Task("check-value", 1)));
    tasks.put("wrong-value", List.of(new Task("check-value", 0.5)));
    tasks.put("reversed", List.of(new Task("turn-round", 0.5)));
    tasks.put("swapped-pins", List.of(new Task("check-pins", 0.5)));
    tasks.put("turned-round", List.of(new Task("turn-round", 0.5)));
    tasks.put("shifted", List.of(new Task("look-at", 0.3)));
    tasks.put("unpowered", List.of(new Task("look-at", 0.3)));
    tasks.put("bounce", List.of(new Task("measure-again", 0.5)));
    tasks.put("touching", List.of(new Task("part-leads", 0.3)));
    tasks.put("dead-part", List.of(new Task("change-part", 1)));
    tasks.put("supply-off", List.of(new Task("switch-on", 0.2)));
    tasks.put("supply-limit", List.of(new Task("check-supply", 0.5)));
    tasks.put("supply-low", List.of(new Task("check-supply", 0.5)));
    tasks.put("supply-reversed", List.of(new Task("check-supply", 0.5)));
    tasks.put("meter-leads", List.of(new Task("swap-meter-leads", 0.3)));
    tasks.put("meter-scale", List.of(new Task("measure-again", 0.5)));
    tasks.put("meter-mode", List.of(new Task("set-meter", 0.3)));
    tasks.put("meter-fuse", List.of(new Task("other-meter", 0.5)));
    tasks.put("readings-exchanged", List.of(new Task("measure-again", 1)));
    tasks.put("meter-place", List.of(new Task("measure-again", 0.5)));
    return tasks;
  }

  static List<Act> of(List<Suspect> suspects) {
    var acts = new ArrayList<Act>();
    if (suspects.isEmpty() || suspects.get(0).place() instanceof Place.Nowhere) {
      return acts;
    }
    for (Suspect suspect : suspects) {
      if (suspect.probability() >= LEAST) {
        Suspect.Guess guess = suspect.likeliest();
        for (Task task : BY_KIND.getOrDefault(guess.kind(), List.of())) {
          acts.add(new Act(task.act(), suspect.place(), guess.holes(), task.minutes()));
        }
      }
    }
    acts.sort(Comparator.comparingDouble(Act::minutes));
    return List.copyOf(acts.subList(0, Math.min(MOST, acts.size())));
  }
}
