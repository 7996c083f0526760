package org.holewise.school.roster;

import java.util.ArrayList;
import java.util.List;
import org.holewise.school.account.Audit;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.SignIns;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What teachers do to classes and students, each act noted with who did it. */
@Component
class Register {

  private static final String CLASS = "class";
  private static final String PERSON = "person";

  private final Classes classes;
  private final People people;
  private final Cards cards;
  private final SignIns signIns;
  private final Audit audit;

  Register(Classes classes, People people, Cards cards, SignIns signIns, Audit audit) {
    this.classes = classes;
    this.people = people;
    this.cards = cards;
    this.signIns = signIns;
    this.audit = audit;
  }

  /** Adds a class; a taken name is a DuplicateKeyException. */
  @Transactional
  public ClassGroup addClass(Person teacher, String name) {
    var group = classes.add(name);
    audit.note(teacher, "class.added", CLASS, group.id());
    return group;
  }

  /** Renames a class; a taken name is a DuplicateKeyException. */
  @Transactional
  public void renameClass(Person teacher, ClassGroup group, String name) {
    if (classes.rename(group, name)) {
      audit.note(teacher, "class.renamed", CLASS, group.id());
    }
  }

  @Transactional
  public void addStudents(Person teacher, ClassGroup group, List<String> names) {
    for (String name : names) {
      audit.note(teacher, "student.added", PERSON, classes.addStudent(group, name).id());
    }
  }

  @Transactional
  public void renameStudent(Person teacher, Person student, String name) {
    if (people.renameStudent(student.id(), name)) {
      audit.note(teacher, "student.renamed", PERSON, student.id());
    }
  }

  /** Takes a student out of a class; who is then in none is signed out, and their card is dead. */
  @Transactional
  public void removeStudent(Person teacher, ClassGroup group, Person student) {
    if (classes.remove(group, student.id())) {
      audit.note(teacher, "student.removed", PERSON, student.id());
      if (classes.of(student).isEmpty()) {
        signIns.end(student);
      }
    }
  }

  /** Puts a student from one class into another. */
  @Transactional
  public void moveStudent(Person teacher, ClassGroup from, ClassGroup to, Person student) {
    if (classes.remove(from, student.id())) {
      placeStudent(teacher, to, student);
    }
  }

  /** Puts a student into a class. */
  @Transactional
  public void placeStudent(Person teacher, ClassGroup to, Person student) {
    if (classes.place(to, student.id())) {
      audit.note(teacher, "student.placed", PERSON, student.id());
    }
  }

  /** Makes new cards, in the order of the students; their earlier ones are dead. */
  @Transactional
  public List<NewCard> makeCards(Person teacher, List<Person> students) {
    var made = new ArrayList<NewCard>();
    for (Person student : students) {
      made.add(new NewCard(student, cards.make(student)));
      audit.note(teacher, "card.made", PERSON, student.id());
    }
    return made;
  }

  /** A card that was made now, with its code in clear for the only time. */
  record NewCard(Person student, String code) {}
}
