package org.holewise.school.roster;

import static java.util.stream.Collectors.toMap;

import java.util.Map;
import java.util.Set;
import org.holewise.school.account.SubjectNames;
import org.springframework.stereotype.Component;

@Component
class ClassNames implements SubjectNames {

  private final Classes classes;

  ClassNames(Classes classes) {
    this.classes = classes;
  }

  @Override
  public String subject() {
    return "class";
  }

  @Override
  public Map<Long, String> of(Set<Long> ids) {
    return classes.all().stream()
        .filter(group -> ids.contains(group.id()))
        .collect(toMap(ClassGroup::id, ClassGroup::name));
  }
}
