package org.holewise.school.system;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Refusals that programs get before a call reaches its controller (RFC 9457, RFC 6750). */
@Component
class Problems {

  private final JsonMapper json;

  Problems(JsonMapper json) {
    this.json = json;
  }

  void unauthenticated(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
      throws IOException {
    boolean unknown = why instanceof BadCredentialsException;
    response.setHeader(
        HttpHeaders.WWW_AUTHENTICATE,
        "Bearer realm=\"Holewise\"" + (unknown ? ", error=\"invalid_token\"" : ""));
    send(
        response,
        HttpStatus.UNAUTHORIZED,
        unknown
            ? "The token is not known, or was revoked. Make another on your account page."
            : "Send a token, made on your account page, as \"Authorization: Bearer ...\".");
  }

  /** For a script on a page whose reader is no longer signed in. */
  void signedOut(HttpServletResponse response) throws IOException {
    send(
        response, HttpStatus.UNAUTHORIZED, "Nobody is signed in. Sign in again, then repeat this.");
  }

  void forbidden(HttpServletResponse response) throws IOException {
    send(response, HttpStatus.FORBIDDEN, "The person of this token may not do this.");
  }

  void tooLarge(HttpServletResponse response, int limit) throws IOException {
    send(
        response,
        HttpStatus.CONTENT_TOO_LARGE,
        "The body is longer than the " + limit / 1024 + " KB that this address takes.");
  }

  private void send(HttpServletResponse response, HttpStatus status, String detail)
      throws IOException {
    response.setStatus(status.value());
    response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
    response.getOutputStream().write(json.writeValueAsBytes(problem(status, detail)));
  }

  static Map<String, Object> problem(HttpStatus status, String detail) {
    var problem = new LinkedHashMap<String, Object>();
    problem.put("title", status.getReasonPhrase());
    problem.put("status", status.value());
    problem.put("detail", detail);
    return problem;
  }
}
