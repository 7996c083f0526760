package org.holewise.school.account;

import java.io.Serial;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.userdetails.User;

/** A person as the security filters carry them, through a session or for one call of the API. */
public final class SignedIn extends User {

  @Serial private static final long serialVersionUID = 1;

  private final Person person;

  SignedIn(Person person, String passwordHash) {
    super(principal(person), passwordHash, AuthorityUtils.createAuthorityList(authority(person)));
    this.person = person;
  }

  /** Somebody who came in by another way than a password. */
  public static SignedIn without(Person person) {
    return new SignedIn(person, "");
  }

  public Person person() {
    return person;
  }

  /** The name of a person's sessions: two people may share the name that others see. */
  static String principal(Person person) {
    return "person " + person.id();
  }

  // One person is one principal, whatever their name becomes.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SignedIn that && that.person.id() == person.id();
  }

  @Override
  public int hashCode() {
    return Long.hashCode(person.id());
  }

  private static List<String> authority(Person person) {
    return List.of("ROLE_" + person.role().name());
  }
}
