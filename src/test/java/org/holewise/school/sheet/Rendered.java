package org.holewise.school.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.web.util.HtmlUtils;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.FileTemplateResolver;

/** What a fragment of the pages says, drawn without a server. */
final class Rendered {
  private static final SpringTemplateEngine ENGINE = engine();

  private Rendered() {}

  static String html(String template, String fragment, Map<String, Object> values) {
    return ENGINE.process(template, Set.of(fragment), new Context(Locale.ENGLISH, values));
  }

  /** Its words, without tags. */
  static String words(String template, String fragment, Map<String, Object> values) {
    String html = html(template, fragment, values);
    return HtmlUtils.htmlUnescape(html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ")).strip();
  }

  private static SpringTemplateEngine engine() {
    var templates = new FileTemplateResolver();
    templates.setPrefix("templates/");
    templates.setSuffix(".html");
    var messages = new ResourceBundleMessageSource();
    messages.setBasename("messages");
    messages.setDefaultEncoding("UTF-8");
    var engine = new SpringTemplateEngine();
    engine.setTemplateResolver(templates);
    engine.setTemplateEngineMessageSource(messages);
    return engine;
  }
}
