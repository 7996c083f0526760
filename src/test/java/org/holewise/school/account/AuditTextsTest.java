package org.holewise.school.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every act that the code notes can be read on the page of what was done. */
@Tag("fast")
class AuditTextsTest {

  private static final Pattern ACT =
      Pattern.compile("(?:note|done)\\(\\s*[\\w.()]+,\\s*\"([a-z]+\\.[a-z.-]+)\"");

  @Test
  void eachActHasItsSentence() throws IOException {
    var texts = new Properties();
    try (var in = Files.newBufferedReader(Path.of("src/main/resources/messages.properties"))) {
      texts.load(in);
    }
    var acts = acts();
    assertThat(acts).contains("signed.in", "class.added", "session.opened");
    acts.removeIf(act -> texts.containsKey("audit." + act));
    assertThat(acts).isEmpty();
  }

  private static TreeSet<String> acts() throws IOException {
    var acts = new TreeSet<String>();
    try (var files = Files.walk(Path.of("src/main/java/org/holewise/school"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        ACT.matcher(Files.readString(file)).results().forEach(found -> acts.add(found.group(1)));
      }
    }
    return acts;
  }
}
