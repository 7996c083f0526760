package org.holewise.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The same input must give the same bytes on every machine: so the engine has no way out. */
@Tag("fast")
class EngineIsPureTest {

  private static final String ENGINE = "org.holewise.engine..";

  /** Read the data files that lie beside them; nothing else in the engine reads anything. */
  private static final String READ_FILES =
      "org\\.holewise\\.engine\\.(board\\.BoardModels|reading\\.Meters)";

  /** Differ in their last bit between machines, or between interpreter and compiler. */
  private static final Set<String> INEXACT =
      Set.of(
          "exp", "log", "log10", "log1p", "expm1", "pow", "sin", "cos", "tan", "asin", "acos",
          "atan", "atan2", "sinh", "cosh", "tanh", "cbrt", "hypot", "random");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.holewise");

  @Test
  void usesOnlyPureLibraries() {
    classes()
        .that()
        .resideInAPackage(ENGINE)
        .and()
        .haveNameNotMatching(READ_FILES)
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(
                ENGINE,
                "java.lang",
                "java.lang.invoke",
                "java.lang.runtime",
                "java.math",
                "java.text",
                "java.util",
                "java.util.function",
                "java.util.regex",
                "java.util.stream",
                "org.ejml..",
                "org.jgrapht..",
                "org.jspecify.annotations",
                ""))
        .check(CLASSES);
  }

  @Test
  void asksNeitherClockNorChance() {
    noClasses()
        .that()
        .resideInAPackage(ENGINE)
        .should()
        .accessTargetWhere(
            calls("java.lang.System", "currentTimeMillis", "nanoTime", "getenv", "getProperty")
                .or(calls("java.util.UUID", "randomUUID"))
                .or(calls("java.util.Locale", "getDefault"))
                .or(unseeded()))
        .check(CLASSES);
  }

  @Test
  void computesTheSameDigitsEverywhere() {
    noClasses()
        .that()
        .resideInAPackage(ENGINE)
        .should()
        .accessTargetWhere(calls("java.lang.Math", INEXACT.toArray(String[]::new)))
        .check(CLASSES);
  }

  @Test
  void doesNotLookIntoClasses() {
    noClasses()
        .that()
        .resideInAPackage(ENGINE)
        .and()
        .haveNameNotMatching(READ_FILES)
        .should()
        .accessTargetWhere(
            describe(
                "looks into a class",
                access ->
                    access.getTargetOwner().isEquivalentTo(Class.class)
                        && !Set.of("getSimpleName", "isInstance", "cast", "desiredAssertionStatus")
                            .contains(access.getTarget().getName())))
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaAccess<?>> calls(String owner, String... names) {
    return describe(
        owner + " " + Set.of(names),
        access ->
            access.getTargetOwner().getName().equals(owner)
                && Set.of(names).contains(access.getTarget().getName()));
  }

  private static DescribedPredicate<JavaAccess<?>> unseeded() {
    return describe(
        "a random source without a seed",
        access ->
            access.getTarget().getFullName().equals("java.util.Random.<init>()")
                || access.getTarget().getFullName().equals("java.util.SplittableRandom.<init>()"));
  }
}
