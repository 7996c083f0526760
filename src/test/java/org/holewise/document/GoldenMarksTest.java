package org.holewise.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same request gives the same bytes: today as when it was kept, and in every JVM. */
class GoldenMarksTest {

  static List<String> names() {
    return GoldenMarks.NAMES;
  }

  @Tag("fast")
  @ParameterizedTest
  @MethodSource("names")
  void isTheMarkThatWasKept(String name) {
    assertThat(new String(GoldenMarks.mark(name), StandardCharsets.UTF_8))
        .isEqualTo(new String(GoldenMarks.kept(name), StandardCharsets.UTF_8));
  }

  @Tag("fast")
  @Test
  void thereAreTwentyAndTheyDiffer() {
    assertThat(GoldenMarks.NAMES).hasSizeGreaterThanOrEqualTo(20).doesNotHaveDuplicates();
    assertThat(
            GoldenMarks.NAMES.stream()
                .map(n -> new String(GoldenMarks.kept(n), StandardCharsets.UTF_8)))
        .doesNotHaveDuplicates();
  }

  /** One of each exercise: an interpreter takes seconds for each. */
  private static final List<String> SOME =
      List.of("moonlight-sound", "dimmer-no-bridge", "cue-link-end-off");

  /** This Java, interpreted, and every other that is installed beside it, compiling. */
  static Stream<Path> javas() throws IOException {
    Path own = Path.of(System.getProperty("java.home"));
    var all = new ArrayList<Path>();
    all.add(own);
    try (var beside = Files.list(own.toRealPath().getParent())) {
      beside
          .filter(Files::isDirectory)
          .filter(home -> Files.isExecutable(home.resolve("bin/java")))
          .map(GoldenMarksTest::real)
          .filter(home -> !home.equals(real(own)))
          .distinct()
          .sorted()
          .forEach(all::add);
    }
    return all.stream();
  }

  private static Path real(Path home) {
    try {
      return home.toRealPath();
    } catch (IOException e) {
      return home;
    }
  }

  @ParameterizedTest
  @MethodSource("javas")
  void isTheSameInAnotherJvm(Path home, @TempDir Path folder) throws Exception {
    boolean own = home.equals(Path.of(System.getProperty("java.home")));
    List<String> names = own ? SOME : GoldenMarks.NAMES;
    var command =
        new ArrayList<>(
            List.of(
                home.resolve("bin/java").toString(),
                own ? "-Xint" : "-Xmixed",
                "-Duser.language=de",
                "-cp",
                System.getProperty("java.class.path"),
                GoldenMarks.class.getName(),
                folder.toString()));
    command.addAll(names);
    var process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    for (String name : names) {
      assertThat(folder.resolve(name + ".mark.json")).hasBinaryContent(GoldenMarks.kept(name));
    }
  }
}
