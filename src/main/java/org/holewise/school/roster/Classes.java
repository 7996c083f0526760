package org.holewise.school.roster;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.holewise.school.account.Instants;
import org.holewise.school.account.People;
import org.holewise.school.account.Person;
import org.holewise.school.account.TypedName;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The class groups of the school and who is in them. */
@Repository
public class Classes {

  private static final RowMapper<ClassGroup> GROUP =
      (row, n) -> new ClassGroup(row.getLong("id"), row.getString("name"));

  private static final String ENROLLED =
      """
      select p.id, p.name, p.role, c.made_at as card from people p
      join group_members m on m.person = p.id left join cards c on c.person = p.id
      where m.class_group = ?
      """;

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
    String tidy = TypedName.tidy(name);
    db.sql("insert into class_groups (name, made_at) values (?, ?)")
        .params(tidy, OffsetDateTime.now(clock))
        .update();
    return db.sql("select id, name from class_groups where name = ?")
        .param(tidy)
        .query(GROUP)
        .single();
  }

  /** The class of that name, in whatever case. */
  Optional<ClassGroup> named(String name) {
    return db
        .sql("select id, name from class_groups where lower(name) = lower(?) order by id")
        .param(TypedName.tidy(name))
        .query(GROUP)
        .list()
        .stream()
        .findFirst();
  }

  /** Gives a class another name; a taken one is a DuplicateKeyException. */
  boolean rename(ClassGroup group, String name) {
    return db.sql("update class_groups set name = ? where id = ?")
            .params(TypedName.tidy(name), group.id())
            .update()
        == 1;
  }

  /** All classes with the number of their students. */
  List<ClassSize> sizes() {
    return db.sql(
            """
            select g.id, g.name, count(m.person) as students from class_groups g
            left join group_members m on m.class_group = g.id
            group by g.id, g.name order by g.name
            """)
        .query((row, n) -> new ClassSize(GROUP.mapRow(row, n), row.getInt("students")))
        .list();
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

  /** A student of the class. */
  Optional<Enrolled> enrolled(ClassGroup group, long student) {
    return db.sql(ENROLLED + " and p.id = ?")
        .params(group.id(), student)
        .query(Classes::enrolled)
        .optional();
  }

  /** The students of a class by their names, with their cards. */
  List<Enrolled> roll(ClassGroup group) {
    return db.sql(ENROLLED + " order by lower(p.name), p.id")
        .param(group.id())
        .query(Classes::enrolled)
        .list();
  }

  /** A student of the school, in whatever class or in none. */
  Optional<Person> student(long id) {
    return db.sql(
            """
            select id, name, role from people
            where id = ? and role = 'STUDENT' and left_at is null
            """)
        .param(id)
        .query(People::person)
        .optional();
  }

  /** The classes that a student is in. */
  List<ClassGroup> of(Person student) {
    return db.sql(
            """
            select g.id, g.name from class_groups g join group_members m on m.class_group = g.id
            where m.person = ? order by g.name
            """)
        .param(student.id())
        .query(GROUP)
        .list();
  }

  /** Students who are in no class, by their names. */
  List<Person> withoutClass() {
    return db.sql(
            """
            select id, name, role from people where role = 'STUDENT' and left_at is null
            and not exists (select 1 from group_members m where m.person = people.id)
            order by lower(name), id
            """)
        .query(People::person)
        .list();
  }

  /** Puts a student of the school into a class; false where the student is there. */
  boolean place(ClassGroup group, long student) {
    return db.sql(
                """
                insert into group_members (class_group, person)
                select cast(? as bigint), p.id from people p
                where p.id = ? and p.role = 'STUDENT' and not exists
                  (select 1 from group_members m where m.class_group = ? and m.person = p.id)
                """)
            .params(group.id(), student, group.id())
            .update()
        == 1;
  }

  /** Takes a student out of a class; what the student handed in stays. */
  public boolean remove(ClassGroup group, long student) {
    return db.sql("delete from group_members where class_group = ? and person = ?")
            .params(group.id(), student)
            .update()
        == 1;
  }

  private static Enrolled enrolled(ResultSet row, int number) throws SQLException {
    return new Enrolled(People.person(row, number), Instants.maybe(row, "card"));
  }
}
