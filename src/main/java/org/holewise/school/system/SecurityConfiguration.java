package org.holewise.school.system;

import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.holewise.school.account.ApiTokens;
import org.holewise.school.account.BearerTokens;
import org.holewise.school.account.SignInDoor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.authentication.HttpStatusEntryPoint;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.HttpSessionRequestCache;
import org.springframework.security.web.savedrequest.RequestCache;

/** Who may open what: a door for the watch on health, for programs, and for people. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

  private static final String[] TEACHING = {"TEACHER", "ADMINISTRATOR"};

  private static final String SCHEMAS = "/api/schemas/*";

  private static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'none';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final String PERMISSIONS_POLICY =
      "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=(),"
          + " accelerometer=(), gyroscope=(), magnetometer=(), display-capture=()";

  @Bean
  @Order(0)
  SecurityFilterChain healthDoor(HttpSecurity http) {
    return http.securityMatcher("/actuator/**")
        .authorizeHttpRequests(
            all -> all.requestMatchers("/actuator/health").permitAll().anyRequest().denyAll())
        .sessionManagement(
            session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
        .headers(SecurityConfiguration::headers)
        .exceptionHandling(
            refusals ->
                refusals.authenticationEntryPoint(new HttpStatusEntryPoint(HttpStatus.NOT_FOUND)))
        .build();
  }

  @Bean
  @Order(1)
  SecurityFilterChain programDoor(HttpSecurity http, ApiTokens tokens, Problems problems) {
    return http.securityMatcher("/api/**")
        .authorizeHttpRequests(
            calls ->
                calls
                    .requestMatchers(HttpMethod.GET, SCHEMAS)
                    .permitAll()
                    .requestMatchers(HttpMethod.HEAD, SCHEMAS)
                    .permitAll()
                    .anyRequest()
                    .hasAnyRole(TEACHING))
        .sessionManagement(
            session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
        .csrf(AbstractHttpConfigurer::disable)
        .requestCache(AbstractHttpConfigurer::disable)
        .logout(AbstractHttpConfigurer::disable)
        .headers(SecurityConfiguration::headers)
        .exceptionHandling(
            refusals ->
                refusals
                    .authenticationEntryPoint(problems::unauthenticated)
                    .accessDeniedHandler((request, response, why) -> problems.forbidden(response)))
        .addFilterBefore(
            new BearerTokens(tokens, problems::unauthenticated),
            AnonymousAuthenticationFilter.class)
        .addFilterAfter(new BodyLimit(problems), AuthorizationFilter.class)
        .build();
  }

  @Bean
  @Order(2)
  SecurityFilterChain peopleDoor(HttpSecurity http, School school, SignInDoor door, WayIn wayIn) {
    return http.authorizeHttpRequests(pages -> rules(pages, school))
        .formLogin(
            form ->
                form.loginPage(SignInDoor.PAGE)
                    .usernameParameter("name")
                    .successHandler(door)
                    .failureHandler(door))
        .requestCache(cache -> cache.requestCache(pagesAskedFor()))
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/?out"))
        .exceptionHandling(
            refusals -> refusals.authenticationEntryPoint(wayIn).accessDeniedHandler(wayIn))
        .headers(SecurityConfiguration::headers)
        .addFilterBefore(doorFilter(door), UsernamePasswordAuthenticationFilter.class)
        .build();
  }

  private static void rules(
      AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry
          pages,
      School school) {
    pages
        .requestMatchers("/", "/error", "/setup", "/sign-in", "/sign-in/refused", "/card")
        .permitAll()
        .requestMatchers("/css/**", "/js/**", "/img/**", "/favicon.svg", "/favicon.ico")
        .permitAll();
    if (school.isDemo()) {
      pages.requestMatchers("/try/**", "/schematics", "/demo/as/*").permitAll();
    }
    pages
        .requestMatchers("/today/**", "/bench/**")
        .hasRole("STUDENT")
        .requestMatchers("/sessions/**", "/classes/**", "/try/**", "/schematics")
        .hasAnyRole(TEACHING)
        .requestMatchers("/store/**")
        .hasAnyRole("TECHNICIAN", "ADMINISTRATOR")
        .requestMatchers("/people/**", "/audit/**", "/backups/**")
        .hasRole("ADMINISTRATOR")
        .requestMatchers("/account/tokens/**")
        .hasAnyRole(TEACHING)
        .requestMatchers("/account/**")
        .hasAnyRole("TEACHER", "TECHNICIAN", "ADMINISTRATOR")
        .anyRequest()
        .authenticated();
  }

  // Only what staff wanted to read is worth returning to: a card leads to the day's work.
  private static RequestCache pagesAskedFor() {
    var cache = new HttpSessionRequestCache();
    cache.setRequestMatcher(
        request ->
            request.getMethod().equals("GET")
                && WayIn.asksForAPage(request)
                && !WayIn.isForStudents(request));
    return cache;
  }

  private static Filter doorFilter(SignInDoor door) {
    return (request, response, chain) ->
        door.pass((HttpServletRequest) request, (HttpServletResponse) response, chain);
  }

  private static void headers(HeadersConfigurer<HttpSecurity> headers) {
    headers
        .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
        .permissionsPolicyHeader(policy -> policy.policy(PERMISSIONS_POLICY))
        .crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
        .crossOriginResourcePolicy(policy -> policy.policy(CrossOriginResourcePolicy.SAME_ORIGIN));
  }
}
