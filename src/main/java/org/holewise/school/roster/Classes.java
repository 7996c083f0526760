package org.holewise.school.roster;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The class groups of the school and who is in them. */
@Repository
public class Classes {

  private static final RowMapper<ClassGroup> GROUP =
      (row, n) -> new ClassGroup(row.getLong("id"), row.getString("name"));

  private final JdbcClient db;
  private final People people;
  private final Clock clock;

  Classes(JdbcClient db, People people, Clock clock) {
    this.db = db;
    this.people = people;
    this.clock = clock;
  }

  /** Adds a class; a taken name is a DuplicateKeyException. */
  public ClassGroup add(String name) {
    db.sql("insert into class_groups (name, made_at) values (?, ?)")
        .params(name.strip(), OffsetDateTime.now(clock))
        .update();
    return db.sql("select id, name from class_groups where name = ?")
        .param(name.strip())
        .query(GROUP)
        .single();
  }

  public List<ClassGroup> all() {
    return db.sql("select id, name from class_groups order by name").query(GROUP).list();
  }

  public Optional<ClassGroup> find(long id) {
    return db.sql("select id, name from class_groups where id = ?")
        .param(id)
        .query(GROUP)
        .optional();
  }

  /** Adds a student to the school and to the class. */
  @Transactional
  public Person addStudent(ClassGroup group, String name) {
    Person student = people.addStudent(name);
    db.sql("insert into group_members (class_group, person) values (?, ?)")
        .params(group.id(), student.id())
        .update();
    return student;
  }

  /** The students of a class by their names. */
  public List<Person> students(ClassGroup group) {
    return db.sql(
            """
            select p.id, p.name, p.role from people p join group_members m on m.person = p.id
            where m.class_group = ? order by lower(p.name), p.id
            """)
        .param(group.id())
        .query(People::person)
        .list();
  }

  /** Takes a student out of a class; what the student handed in stays. */
  public boolean remove(ClassGroup group, long student) {
    return db.sql("delete from group_members where class_group = ? and person = ?")
            .params(group.id(), student)
            .update()
        == 1;
  }
}
