package org.holewise.school.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.event.AuthenticationSuccessEvent;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;
import org.springframework.stereotype.Component;

/**
 * Opens a session for somebody who came in by another way than a password. Whoever used this
 * browser before is out: tablets go from hand to hand, and nobody brings a session along that
 * somebody else chose.
 */
@Component
public class Entrance {

  private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();
  private final CsrfTokenRepository tokens = new HttpSessionCsrfTokenRepository();
  private final ApplicationEventPublisher events;

  Entrance(ApplicationEventPublisher events) {
    this.events = events;
  }

  public void letIn(Person person, HttpServletRequest request, HttpServletResponse response) {
    endSessionBefore(request);
    var signedIn = SignedIn.without(person);
    var proven =
        UsernamePasswordAuthenticationToken.authenticated(
            signedIn, null, signedIn.getAuthorities());
    proven.setDetails(new WebAuthenticationDetails(request));
    var context = new SecurityContextImpl(proven);
    SecurityContextHolder.setContext(context);
    contexts.saveContext(context, request, response);
    // Else the first pages would each make one, and only the last to do so could send its form.
    tokens.saveToken(tokens.generateToken(request), request, response);
    events.publishEvent(new AuthenticationSuccessEvent(proven));
  }

  private static void endSessionBefore(HttpServletRequest request) {
    HttpSession before = request.getSession(false);
    if (before != null) {
      before.invalidate();
    }
  }
}
