package org.holewise.school.system;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * A demo lets everybody in, so it is for its own computer only: it listens on the loopback address,
 * and answers only to that computer's names, lest a page from elsewhere reach it under another.
 */
@Component
@Profile("demo")
@Order(Ordered.HIGHEST_PRECEDENCE)
class DemoDoor extends OncePerRequestFilter {

  private static final Set<String> OWN = Set.of("localhost", "127.0.0.1", "[::1]");

  DemoDoor(ServerProperties server) {
    var address = server.getAddress();
    if (address == null || !address.isLoopbackAddress()) {
      throw new RefusedStart(
          "A demo school has no sign-in, so it runs only on this computer's loopback address, not"
              + " on "
              + address
              + ".",
          "Leave --server.address away. For a school on a network start the packaged jar.");
    }
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (OWN.contains(name(request.getHeader(HttpHeaders.HOST)))) {
      chain.doFilter(request, response);
      return;
    }
    response.setStatus(HttpStatus.MISDIRECTED_REQUEST.value());
    response.setContentType("text/plain;charset=utf-8");
    response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    response.setHeader("X-Content-Type-Options", "nosniff");
    response
        .getOutputStream()
        .write(
            "This is a demo school. Open it as localhost, on its own computer.\n".getBytes(UTF_8));
  }

  private static String name(@Nullable String host) {
    return host == null ? "" : host.toLowerCase(Locale.ROOT).replaceFirst(":\\d*$", "");
  }
}
