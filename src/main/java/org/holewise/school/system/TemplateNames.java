package org.holewise.school.system;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.thymeleaf.engine.AttributeNames;

/**
 * Makes every attribute of the templates known to Thymeleaf before the first visitor comes. It
 * looks them up under one fair lock. Where a new name is written while many pages are on their way,
 * all of them queue, and hand the lock on from one to the next, name by name, for as long as the
 * rush lasts: a class that came in at a restart waited for a minute.
 */
@Component
class TemplateNames implements SmartInitializingSingleton {

  private static final String TEMPLATES = "classpath*:templates/**/*.html";

  /** Names before an equals sign, in tags and in what {@code th:attr} sets; more do no harm. */
  private static final Pattern NAME = Pattern.compile("([A-Za-z][\\w:.-]*)\\s*=");

  @Override
  public void afterSingletonsInstantiated() {
    try {
      for (var template : new PathMatchingResourcePatternResolver().getResources(TEMPLATES)) {
        NAME.matcher(template.getContentAsString(UTF_8))
            .results()
            .forEach(found -> know(found.group(1)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void know(String name) {
    AttributeNames.forHTMLName(name);
    AttributeNames.forHTMLName(name.substring(name.indexOf(':') + 1));
  }
}
