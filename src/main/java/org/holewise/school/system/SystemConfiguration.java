package org.holewise.school.system;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Locale;
import org.holewise.drawing.sheet.SymbolStyle;
import org.holewise.school.system.School.Kind;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;

/** Time, chance, the password hash and the place of the data, handed to whoever needs them. */
@Configuration(proxyBeanMethods = false)
class SystemConfiguration {

  @Bean
  School school(Environment environment) {
    return new School(environment.matchesProfiles("demo") ? Kind.DEMO : Kind.SCHOOL);
  }

  /** By which it is this day or the next; this computer's own where none is named. */
  @Bean
  ZoneId zone(@Value("${holewise.zone}") String name) {
    try {
      return name.isBlank() ? ZoneId.systemDefault() : ZoneId.of(name.strip());
    } catch (DateTimeException unknown) {
      throw new RefusedStart(
          "There is no time zone “" + name + "”, which holewise.zone names.",
          "Name one as the IANA time zone database does, such as Europe/Lisbon, or leave it out.");
    }
  }

  /** Whose symbols schematics are drawn with. */
  @Bean
  SymbolStyle symbols(@Value("${holewise.symbols}") String name) {
    try {
      return SymbolStyle.valueOf(name.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException unknown) {
      throw new RefusedStart(
          "There are no symbols “" + name + "”, which holewise.symbols names.",
          "Name iec or ansi, or leave it out.");
    }
  }

  /** A demo has a clock of its own, for scenes of the past. */
  @Bean
  @Profile("!demo")
  Clock clock(ZoneId zone) {
    return Clock.system(zone);
  }

  @Bean
  SecureRandom random() {
    return new SecureRandom();
  }

  @Bean
  PasswordEncoder passwordEncoder() {
    return PasswordEncoderFactories.createDelegatingPasswordEncoder();
  }

  /** Where no database is named, an embedded one in the data folder. */
  @Bean
  @ConditionalOnProperty(
      name = "spring.datasource.url",
      havingValue = "embedded",
      matchIfMissing = true)
  JdbcConnectionDetails embeddedStore(@Value("${holewise.data}") Path folder) {
    var store = new EmbeddedStore(folder.toAbsolutePath().normalize().resolve("holewise"));
    store.tidy();
    return store;
  }
}
