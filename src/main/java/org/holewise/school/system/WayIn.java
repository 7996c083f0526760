package org.holewise.school.system;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.util.matcher.MediaTypeRequestMatcher;
import org.springframework.stereotype.Component;

/**
 * What somebody meets who may not do what they asked for. Who asks for a page and is not signed in
 * is led to their way in; a script is only told, so that its page keeps what was typed.
 */
@Component
class WayIn implements AuthenticationEntryPoint, AccessDeniedHandler {

  /** Set for the error page where a form was sent without the token of a living session. */
  static final String STALE = "org.holewise.stale";

  private static final MediaTypeRequestMatcher HTML = html();

  private final School school;
  private final Problems problems;

  WayIn(School school, Problems problems) {
    this.school = school;
    this.problems = problems;
  }

  @Override
  public void commence(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
      throws IOException {
    if (asksForAPage(request)) {
      response.sendRedirect(request.getContextPath() + door(request));
    } else {
      problems.signedOut(response);
    }
  }

  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse response, AccessDeniedException why)
      throws IOException, ServletException {
    boolean stale = why instanceof CsrfException;
    if (stale && isNobody() && !asksForAPage(request)) {
      problems.signedOut(response);
      return;
    }
    if (stale) {
      request.setAttribute(STALE, true);
    }
    response.sendError(HttpServletResponse.SC_FORBIDDEN);
  }

  /** Whether a browser wants to show the answer as a page; scripts ask for anything, or say so. */
  static boolean asksForAPage(HttpServletRequest request) {
    String mode = request.getHeader("Sec-Fetch-Mode");
    return HTML.matches(request)
        && (mode == null || mode.equals("navigate"))
        && request.getHeader("X-Requested-With") == null;
  }

  static boolean isForStudents(HttpServletRequest request) {
    String path = request.getServletPath();
    return path.equals("/today") || path.startsWith("/today/") || path.startsWith("/bench/");
  }

  // Tokens are looked at before whoever has no session is called anonymous.
  private static boolean isNobody() {
    return SecurityContextHolder.getContext().getAuthentication() == null;
  }

  private String door(HttpServletRequest request) {
    if (school.isDemo()) {
      return "/";
    }
    return isForStudents(request) ? "/card" : "/sign-in";
  }

  private static MediaTypeRequestMatcher html() {
    var html = new MediaTypeRequestMatcher(MediaType.TEXT_HTML);
    html.setIgnoredMediaTypes(Set.of(MediaType.ALL));
    return html;
  }
}
