package org.holewise.school.account;

import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.AuthenticationSuccessEvent;
import org.springframework.stereotype.Component;

/** Notes who came in through a door for people; a program's calls make no such event. */
@Component
class SignInNotes {

  private final Audit audit;

  SignInNotes(Audit audit) {
    this.audit = audit;
  }

  @EventListener
  void note(AuthenticationSuccessEvent event) {
    if (event.getAuthentication().getPrincipal() instanceof SignedIn signedIn) {
      var person = signedIn.person();
      audit.note(person, "signed.in", "person", person.id());
    }
  }
}
