package org.holewise.school.account;

import static java.util.stream.Collectors.toMap;

import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class PeopleNames implements SubjectNames {

  private final JdbcClient db;

  PeopleNames(JdbcClient db) {
    this.db = db;
  }

  @Override
  public String subject() {
    return "person";
  }

  @Override
  public Map<Long, String> of(Set<Long> ids) {
    return db
        .sql("select id, name, role from people where id in (:ids)")
        .param("ids", ids)
        .query(People::person)
        .list()
        .stream()
        .collect(toMap(Person::id, Person::name));
  }
}
