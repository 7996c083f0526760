package org.holewise.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.holewise.running.RunningSchool;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** A method and a pattern of addresses that a controller of ours answers. */
record Route(String method, String pattern) implements Comparable<Route> {

  private static final Pattern VARIABLE = Pattern.compile("\\{\\*?([a-z]+)[^}]*}");

  /** All routes of the application, as it found them itself. */
  static List<Route> of(RunningSchool school) {
    var found = new TreeSet<Route>();
    for (var each : mappings(school).entrySet()) {
      if (each.getValue().getBeanType().getPackageName().startsWith("org.holewise")) {
        found.addAll(of(each.getKey()));
      }
    }
    return List.copyOf(found);
  }

  /** Names of parameters that controllers ask for. */
  static List<String> parameters(RunningSchool school) {
    var names = new TreeSet<String>();
    for (HandlerMethod method : mappings(school).values()) {
      for (var parameter : method.getMethod().getParameters()) {
        if (parameter.isAnnotationPresent(RequestParam.class)) {
          names.add(parameter.getName());
        }
      }
    }
    return List.copyOf(names);
  }

  // Actuator has mappings of its own, under the same type.
  private static Map<RequestMappingInfo, HandlerMethod> mappings(RunningSchool school) {
    return school
        .part("requestMappingHandlerMapping", RequestMappingHandlerMapping.class)
        .getHandlerMethods();
  }

  private static List<Route> of(RequestMappingInfo info) {
    var routes = new ArrayList<Route>();
    for (String pattern : info.getPatternValues()) {
      var methods = info.getMethodsCondition().getMethods();
      if (methods.isEmpty()) {
        routes.add(new Route("GET", pattern));
      }
      methods.forEach(method -> routes.add(new Route(method.name(), pattern)));
    }
    return routes;
  }

  /** The address with its variables filled in. */
  String path(UnaryOperator<String> values) {
    return VARIABLE.matcher(pattern).replaceAll(found -> values.apply(found.group(1)));
  }

  boolean isGet() {
    return method.equals("GET");
  }

  /** Programs bring tokens of their own, in every call. */
  boolean isForPrograms() {
    return pattern.startsWith("/api/");
  }

  @Override
  public int compareTo(Route other) {
    int byPattern = pattern.compareTo(other.pattern);
    return byPattern == 0 ? method.compareTo(other.method) : byPattern;
  }

  @Override
  public String toString() {
    return method + " " + pattern;
  }
}
