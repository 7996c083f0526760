package org.holewise.engine;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.holewise.engine.Published.Family;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Counts the {@link Published} checks from the tables themselves, so that none gets lost. */
@Tag("fast")
class PublishedChecksTest {
  private static final int LEAST_IN_ALL = 120;

  @Test
  void everyFamilyHasItsChecks() throws ReflectiveOperationException {
    Map<Family, Integer> checks = new EnumMap<>(Family.class);
    for (Family family : Family.values()) {
      checks.put(family, 0);
    }
    for (Method test : tests()) {
      checks.merge(test.getAnnotation(Published.class).value(), rows(test), Integer::sum);
    }
    assertThat(checks)
        .allSatisfy((family, rows) -> assertThat(rows).isGreaterThanOrEqualTo(family.least));
    assertThat(checks.values().stream().mapToInt(Integer::intValue).sum())
        .as("%s", checks)
        .isGreaterThanOrEqualTo(LEAST_IN_ALL);
  }

  private static Iterable<Method> tests() {
    return new ClassFileImporter()
            .withImportOption(location -> location.contains("/test-classes/"))
            .importPackagesOf(PublishedChecksTest.class)
            .stream()
            .flatMap(type -> type.getMethods().stream())
            .filter(method -> method.isAnnotatedWith(Published.class))
            .map(JavaMethod::reflect)
            .toList();
  }

  /** Rows of a test's table; one where it has none. */
  private static int rows(Method test) throws ReflectiveOperationException {
    if (test.isAnnotationPresent(MethodSource.class)) {
      return (int) made(test).count();
    }
    int written =
        Optional.ofNullable(test.getAnnotation(CsvSource.class))
                .map(s -> s.value().length)
                .orElse(0)
            + Optional.ofNullable(test.getAnnotation(ValueSource.class))
                .map(s -> s.ints().length + s.doubles().length + s.strings().length)
                .orElse(0);
    return test.isAnnotationPresent(Test.class) ? 1 : written;
  }

  /** What the methods of a test's source make. */
  private static Stream<?> made(Method test) throws ReflectiveOperationException {
    Stream<?> all = Stream.empty();
    for (String name : test.getAnnotation(MethodSource.class).value()) {
      Method source = test.getDeclaringClass().getDeclaredMethod(name);
      source.setAccessible(true);
      Object made = source.invoke(null);
      all = Stream.concat(all, made instanceof Stream<?> s ? s : Arrays.stream((Object[]) made));
    }
    return all;
  }
}
