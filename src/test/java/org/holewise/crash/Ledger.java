package org.holewise.crash;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What the writers sent and what they were told, against which the data are held. */
final class Ledger {

  private final Map<Place, Told> drafts = new ConcurrentHashMap<>();
  private final Map<Key, Boolean> handIns = new ConcurrentHashMap<>();

  /** An entry of a bench's draft, which one writer alone writes. */
  record Place(long bench, String entry) {}

  /** A request to hand in. */
  record Key(long bench, String key) {}

  /**
   * The revision that was acknowledged last, its text, and the text that was sent since, if any.
   */
  private record Told(long revision, String text, List<String> sent) {}

  void sent(Place place, String text) {
    var told = drafts.getOrDefault(place, new Told(0, "", List.of()));
    drafts.put(place, new Told(told.revision(), told.text(), List.of(text)));
  }

  void acknowledged(Place place, String text, long revision) {
    drafts.put(place, new Told(revision, text, List.of()));
  }

  void sent(Key key) {
    handIns.putIfAbsent(key, false);
  }

  void acknowledged(Key key) {
    handIns.put(key, true);
  }

  long handInsToldOf() {
    return handIns.values().stream().filter(told -> told).count();
  }

  long savesToldOf() {
    return drafts.values().stream().mapToLong(Told::revision).sum();
  }

  /** What was sent and not answered. */
  long open() {
    return drafts.values().stream().filter(told -> !told.sent().isEmpty()).count()
        + handIns.values().stream().filter(told -> !told).count();
  }

  /** What the data lack of what was acknowledged, or have too much; a sentence each. */
  List<String> wrongWith(Kept kept) {
    var wrong = new ArrayList<String>();
    drafts.forEach((place, told) -> draft(place, told, kept, wrong));
    handIns.forEach((key, told) -> handIn(key, told, kept, wrong));
    kept.handIns().keySet().stream()
        .filter(key -> !handIns.containsKey(key))
        .forEach(key -> wrong.add(key + " was never sent"));
    wrong.addAll(kept.disorder());
    return wrong;
  }

  private static void draft(Place place, Told told, Kept kept, List<String> wrong) {
    var entry = kept.drafts().getOrDefault(place, new Kept.Entry(0, ""));
    boolean same = entry.revision() == told.revision() && entry.text().equals(told.text());
    boolean next = entry.revision() == told.revision() + 1 && told.sent().contains(entry.text());
    if (told.revision() > 0 && !same && !next) {
      wrong.add(place + " is " + entry + " after " + told);
    }
  }

  private static void handIn(Key key, boolean told, Kept kept, List<String> wrong) {
    int times = kept.handIns().getOrDefault(key, 0);
    if (times > 1 || (told && times == 0)) {
      wrong.add(key + " is there " + times + " times");
    }
  }
}
