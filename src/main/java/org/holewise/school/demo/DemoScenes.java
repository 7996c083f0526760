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

  private final DemoPeople people;
  private final Classes classes;
  private final Lesson lesson;
  private final StoreScene store;

  DemoScenes(DemoPeople people, Classes classes, Lesson lesson, StoreScene store) {
    this.people = people;
    this.classes = classes;
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
    ClassGroup group = classes.add(CLASS);
    var students = STUDENTS.stream().map(name -> classes.addStudent(group, name)).toList();
    lesson.lastWeek(teacher, group, students);
    lesson.now(teacher, group, students);
    lesson.toCome(teacher, group);
    store.lay(technician);
  }
}
