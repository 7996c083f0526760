package org.holewise.school.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.holewise.document.BuildDocument;
import org.holewise.document.ExerciseDocument;
import org.holewise.running.Office;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.library.ExerciseVersions;
import org.holewise.school.library.LibraryExercise;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.session.HintStep;
import org.holewise.school.session.LabSession;
import org.holewise.school.session.LabSessions;
import org.holewise.school.session.Plan;
import org.springframework.core.io.ClassPathResource;

/** A technician, a class that builds the lights of a model stage, and an empty store. */
final class StageStore {

  final Office office;
  final Person technician;
  final Person teacher;
  final Items items;
  final Ledger ledger;
  final Movements movements;
  final Packings packings;
  private final ClassGroup group;

  StageStore(Office office) {
    this.office = office;
    var people = office.part(People.class);
    technician = people.addWithoutPassword("Tamar Quill", Role.TECHNICIAN);
    teacher = people.addWithoutPassword("Orla Fennimore", Role.TEACHER);
    group = office.part(Classes.class).add("9 Lanterns");
    items = office.part(Items.class);
    ledger = office.part(Ledger.class);
    movements = office.part(Movements.class);
    packings = office.part(Packings.class);
  }

  Item item(String label, String part) {
    return item(label, part, 0, 1);
  }

  Item item(String label, String part, int minimum, int pack) {
    var key = part.isEmpty() ? Optional.<PartKey>empty() : PartKey.read(part);
    return items.add(technician, new Item(0, label, key, "A1", minimum, pack));
  }

  /** An item of which so many were delivered. */
  Item stocked(String label, String part, int quantity) {
    Item item = item(label, part);
    write(Optional.empty(), Slip.Line.of(item.id(), Act.DELIVERED, quantity));
    return item;
  }

  LabSession planned(String slug, LocalDate day, int benches) {
    var version = office.part(ExerciseVersions.class).of(shipped(slug));
    var plan = new Plan(group, version, day, benches, HintStep.PLACE, false);
    return office.part(LabSessions.class).plan(teacher, plan);
  }

  Outcome pack(LabSession session, Item item, int quantity) {
    return write(Optional.of(session.id()), Slip.Line.of(item.id(), Act.PACKED, quantity));
  }

  Outcome write(Optional<Long> session, Slip.Line... lines) {
    return ledger.write(technician, new Slip(newKey(), session, "", List.of(lines)));
  }

  Level level(Item item) {
    return items.find(item.id()).orElseThrow();
  }

  List<Movement> rows(Item item) {
    return movements.of(item, Long.MAX_VALUE, Integer.MAX_VALUE);
  }

  static String newKey() {
    return UUID.randomUUID().toString();
  }

  private static LibraryExercise shipped(String slug) {
    String text = text("exercises/" + slug + ".yaml");
    var prepared = ExerciseDocument.yaml(text).orThrow();
    byte[] build = text("exercises/" + slug + "-build.json").getBytes(StandardCharsets.UTF_8);
    var checked = BuildDocument.json(build, prepared.exercise()).orThrow();
    return new LibraryExercise(prepared.exercise(), prepared.notes(), text, checked);
  }

  private static String text(String file) {
    try {
      return new ClassPathResource(file).getContentAsString(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
