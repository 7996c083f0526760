package org.holewise.school.account;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;

/**
 * Slows down the guessing of passwords, by name and by address. A school is often one address: many
 * may sign in from it, and who does so rightly is not counted against it.
 */
@Component
public class SignInDoor extends SavedRequestAwareAuthenticationSuccessHandler
    implements AuthenticationFailureHandler {

  public static final String PAGE = "/sign-in";
  static final String REFUSED = PAGE + "/refused";
  static final String REASON = "org.holewise.signIn.refusedBecause";

  private static final int TRIES_BY_NAME = 10;
  private static final int TRIES_BY_ADDRESS = 300;

  private final Tries tries;

  SignInDoor(Tries tries) {
    this.tries = tries;
  }

  /** The filter that stands before the look at the password. */
  public void pass(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws IOException, ServletException {
    if (!request.getMethod().equals("POST") || !request.getServletPath().equals(PAGE)) {
      chain.doFilter(request, response);
      return;
    }
    boolean address = tries.allow(address(request), TRIES_BY_ADDRESS);
    if (address && tries.allow(name(request), TRIES_BY_NAME)) {
      chain.doFilter(request, response);
    } else {
      refuse(request, response, "signIn.tooMany");
    }
  }

  @Override
  public void onAuthenticationFailure(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException reason)
      throws IOException, ServletException {
    refuse(request, response, "signIn.refused");
  }

  @Override
  public void onAuthenticationSuccess(
      HttpServletRequest request, HttpServletResponse response, Authentication person)
      throws IOException, ServletException {
    tries.forget(name(request));
    tries.forgive(address(request));
    makeToken(request);
    super.onAuthenticationSuccess(request, response, person);
  }

  // Else the first pages would each make one, and only the last to do so could send its form.
  private static void makeToken(HttpServletRequest request) {
    if (request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token) {
      token.getToken();
    }
  }

  private static void refuse(
      HttpServletRequest request, HttpServletResponse response, String reason)
      throws IOException, ServletException {
    request.setAttribute(REASON, reason);
    request.getRequestDispatcher(REFUSED).forward(request, response);
  }

  private static String address(HttpServletRequest request) {
    return "sign-in from " + request.getRemoteAddr();
  }

  private static String name(HttpServletRequest request) {
    String name = request.getParameter("name");
    return "sign-in as " + People.signInName(name == null ? "" : name);
  }
}
