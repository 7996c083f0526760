package org.holewise.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What README and DEVELOPERS.md say is there is there. */
@Tag("fast")
class GuidesTest {

  private static final Pattern QUOTED = Pattern.compile("`([^`\n]+)`");
  private static final Pattern OURS = Pattern.compile("(src|db|templates|\\.ci|\\.docker)/\\S*");

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
  void nameOnlyFilesThatAreThere(String guide) throws IOException {
    for (String quoted : quoted(guide)) {
      if (OURS.matcher(quoted).matches()) {
        assertThat(Path.of(quoted)).as("%s in %s", quoted, guide).exists();
      }
    }
  }

  @Test
  void nameOnlySettingsThatAreThere() throws IOException {
    var settings = quoted("README.md").stream().filter(word -> word.startsWith("--")).toList();
    assertThat(settings).contains("--server.port", "--holewise.data");
    String known = Files.readString(Path.of("src/main/resources/application.properties"));
    for (String setting : settings) {
      String name = setting.substring(2);
      assertThat(name.startsWith("holewise.") && !known.contains(name + "=")).as(name).isFalse();
    }
  }

  @Test
  void giveTheTestCommandThatIsRunBeforeAChangeLands() throws IOException {
    assertThat(Files.readString(Path.of("README.md"))).contains("\nmvn verify\n");
    assertThat(Files.readString(Path.of(".ci/run"))).contains("\nmvn -B verify ");
  }

  @Test
  void giveTheNameOfTheJarThatTheBuildMakes() throws IOException {
    var version = Pattern.compile("<version>([^<]+)</version>\n  <name>");
    var found = version.matcher(Files.readString(Path.of("pom.xml")));
    assertThat(found.find()).isTrue();
    assertThat(Files.readString(Path.of("README.md")))
        .contains("holewise-" + found.group(1) + ".jar");
  }

  private static List<String> quoted(String guide) throws IOException {
    var words = QUOTED.matcher(Files.readString(Path.of(guide))).results();
    return words.map(word -> word.group(1)).toList();
  }
}
