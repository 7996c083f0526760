package org.holewise.school.system;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.stream.Stream;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Parameters that are not encoded as they should be are the sender's fault, wherever they are first
 * looked at: some filter may do so before any controller.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
class UnreadableRequests extends OncePerRequestFilter {

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    try {
      chain.doFilter(request, response);
    } catch (ServletException | IOException | RuntimeException failure) {
      if (response.isCommitted() || !isUnreadable(failure)) {
        throw failure;
      }
      response.sendError(HttpServletResponse.SC_BAD_REQUEST);
    }
  }

  private static boolean isUnreadable(Throwable failure) {
    return Stream.<Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
        .anyMatch(
            cause ->
                cause instanceof InvalidParameterException
                    || cause instanceof HttpMessageNotReadableException);
  }
}
