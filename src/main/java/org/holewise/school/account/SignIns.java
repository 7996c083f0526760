package org.holewise.school.account;

import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Component;

/** Where people are signed in now, on whatever device and at whichever copy of the application. */
@Component
public class SignIns {

  private final FindByIndexNameSessionRepository<?> sessions;

  SignIns(FindByIndexNameSessionRepository<?> sessions) {
    this.sessions = sessions;
  }

  /** Signs a person out everywhere. */
  public void end(Person person) {
    sessions.findByPrincipalName(SignedIn.principal(person)).keySet().forEach(sessions::deleteById);
  }

  /** Signs a person out everywhere but in one session. */
  void endOthers(Person person, String kept) {
    sessions.findByPrincipalName(SignedIn.principal(person)).keySet().stream()
        .filter(id -> !id.equals(kept))
        .forEach(sessions::deleteById);
  }
}
