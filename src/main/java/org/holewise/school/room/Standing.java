package org.holewise.school.room;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.school.account.Person;
import org.holewise.school.session.Bench;

/**
 * How a student stands in a session: what the student's benches handed in while the student was
 * there, the last of which counts.
 *
 * @param bench where the student handed in last, else where the student sits; empty where nowhere
 */
record Standing(Person student, Optional<Integer> bench, List<Attempt> attempts) {

  private static final Comparator<Attempt> EARLIEST =
      Comparator.comparing(Attempt::at).thenComparing(Attempt::id);

  Optional<Attempt> last() {
    return attempts.stream().max(EARLIEST);
  }

  /**
   * Everybody of the class, and whoever else handed in or has a bench, by their names.
   *
   * @param handed who took part in which hand-ins
   */
  static List<Standing> of(
      List<Person> students, List<Bench> benches, Map<Person, List<Attempt>> handed) {
    var everybody = new LinkedHashMap<Long, Person>();
    Stream.of(
            students.stream(),
            benches.stream().flatMap(bench -> bench.members().stream()),
            handed.keySet().stream())
        .flatMap(people -> people)
        .forEach(person -> everybody.putIfAbsent(person.id(), person));
    return everybody.values().stream()
        .sorted(Comparator.comparing(Person::name).thenComparing(Person::id))
        .map(person -> of(person, benches, handed.getOrDefault(person, List.of())))
        .toList();
  }

  private static Standing of(Person student, List<Bench> benches, List<Attempt> attempts) {
    var last = attempts.stream().max(EARLIEST).map(Attempt::bench);
    var bench =
        benches.stream()
            .filter(one -> last.isPresent() ? last.get() == one.id() : one.has(student))
            .map(Bench::number)
            .findFirst();
    return new Standing(student, bench, attempts);
  }
}
