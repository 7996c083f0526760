package org.holewise.school.demo;

import java.util.List;
import org.holewise.school.account.Person;
import org.holewise.school.account.Role;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.school.store.StoreScene;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The scenes that a new demo begins with, in the order in which they happened. */
@Component
@Profile("demo")
public class DemoScenes {

  private static final String CLASS = "9b";

  private static final List<String> STUDENTS =
      List.of(
          "Wren", "Sorrel", "Hazel", "Rowan", "Linden", "Bryony", "Alder", "Clover", "Tansy",
          "Aspen", "Fern", "Heron", "Juniper", "Lark", "Maple", "Myrtle", "Poppy", "Robin",
          "Saffron", "Teasel");

  /** A class that was there before, of which only past lessons are shown. */
  private static final String OTHER_CLASS = "9a";

  private static final List<String> OTHER_STUDENTS =
      List.of(
          "Basil", "Bramble", "Cedar", "Dell", "Flax", "Heath", "Ivy", "Laurel", "Moss", "Olive");

  private final DemoPeople people;
  private final Classes classes;
  private final PastLessons past;
  private final Lesson lesson;
  private final StoreScene store;

  DemoScenes(
      DemoPeople people, Classes classes, PastLessons past, Lesson lesson, StoreScene store) {
    this.people = people;
    this.classes = classes;
    this.past = past;
    this.lesson = lesson;
    this.store = store;
  }

  /** Lays all scenes or, where a demo has a class already, none: one transaction holds them. */
  @Transactional
  public void lay() {
    if (!classes.all().isEmpty()) {
      return;
    }
    Person teacher = people.of(Role.TEACHER);
    Person technician = people.of(Role.TECHNICIAN);
    people.of(Role.ADMINISTRATOR);
    ClassGroup other = classes.add(OTHER_CLASS);
    past.lay(teacher, other, students(other, OTHER_STUDENTS));
    ClassGroup group = classes.add(CLASS);
    var students = students(group, STUDENTS);
    lesson.lastWeek(teacher, group, students);
    lesson.now(teacher, group, students);
    lesson.toCome(teacher, group);
    store.lay(technician);
  }

  private List<Person> students(ClassGroup group, List<String> names) {
    return names.stream().map(name -> classes.addStudent(group, name)).toList();
  }
}
