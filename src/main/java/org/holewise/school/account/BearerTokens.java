package org.holewise.school.account;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets a call in as the holder of the token in its Authorization header (RFC 6750, 2.1). */
public final class BearerTokens extends OncePerRequestFilter {

  private static final String SCHEME = "Bearer ";

  private final ApiTokens tokens;
  private final AuthenticationEntryPoint refusal;

  public BearerTokens(ApiTokens tokens, AuthenticationEntryPoint refusal) {
    this.tokens = tokens;
    this.refusal = refusal;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String header = request.getHeader(HttpHeaders.AUTHORIZATION);
    if (header == null || !header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
      chain.doFilter(request, response);
      return;
    }
    var holder = tokens.holder(header.substring(SCHEME.length()).strip());
    if (holder.isEmpty()) {
      refusal.commence(request, response, new BadCredentialsException("no such token"));
      return;
    }
    letIn(holder.get());
    chain.doFilter(request, response);
  }

  private static void letIn(SignedIn holder) {
    var caller =
        UsernamePasswordAuthenticationToken.authenticated(holder, null, holder.getAuthorities());
    SecurityContextHolder.setContext(new SecurityContextImpl(caller));
  }
}
