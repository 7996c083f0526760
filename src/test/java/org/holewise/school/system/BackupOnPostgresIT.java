package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.holewise.store.Postgres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands that the page shows back a school on PostgreSQL up and restore it. Skipped where the
 * machine has no tools as new as the server.
 */
class BackupOnPostgresIT {

  private static final String PASSWORD = "violet kettle under seven ladders";

  private final Postgres.Server server = Postgres.emptyDatabase();

  @Test
  void theCommandsOnThePageBringEverythingBack(@TempDir Path folder) throws Exception {
    Path tools = tools().orElse(Path.of(""));
    assumeTrue(Files.isExecutable(tools.resolve("pg_dump")), "no pg_dump as new as the server");
    List<String> commands;
    try (var school = RunningSchool.plain(folder, settings(server.url()))) {
      var classes = school.part(Classes.class);
      classes.addStudent(classes.add("9b"), "Wren");
      commands = commandsOfThePage(school);
    }
    assertThat(commands).hasSize(3);
    for (String command : commands) {
      run(tools, command, folder);
    }
    try (var restored = RunningSchool.plain(folder, settings(server.url() + "_restored"))) {
      var group = restored.part(Classes.class).all();
      assertThat(group).extracting(ClassGroup::name).containsExactly("9b");
      assertThat(restored.part(Classes.class).students(group.get(0))).hasSize(1);
      signedIn(restored);
    }
  }

  private static List<String> commandsOfThePage(RunningSchool school) {
    school.part(People.class).add("Ada", Role.ADMINISTRATOR, PASSWORD);
    var ada = signedIn(school);
    assertThat(ada.sends("/backups", "/backups").statusCode()).isEqualTo(404);
    String page = ada.opens("/backups").body();
    assertThat(page).doesNotContain("Back up now");
    var commands = new ArrayList<String>();
    for (String id : new String[] {"dump", "restore"}) {
      String typed = page.replaceAll("(?s).*<pre id=\"" + id + "\"[^>]*>(.*?)</pre>.*", "$1");
      typed.lines().forEach(commands::add);
    }
    return commands;
  }

  private static Visitor signedIn(RunningSchool school) {
    var visitor = new Visitor(school);
    assertThat(visitor.signsIn("Ada", PASSWORD).statusCode()).isEqualTo(302);
    return visitor;
  }

  private void run(Path tools, String command, Path folder)
      throws IOException, InterruptedException {
    var words = new ArrayList<>(List.of(command.split(" ")));
    words.set(0, tools.resolve(words.get(0)).toString());
    var process = new ProcessBuilder(words).directory(folder.toFile()).redirectErrorStream(true);
    process.environment().put("PGPASSWORD", server.password());
    var running = process.start();
    String said = new String(running.getInputStream().readAllBytes());
    assertThat(running.waitFor()).as("%s: %s", command, said).isZero();
  }

  // The tools read servers of their own version and older ones.
  private Optional<Path> tools() throws IOException {
    Path all = Path.of("/usr/lib/postgresql");
    if (!Files.isDirectory(all)) {
      return Optional.empty();
    }
    try (var versions = Files.list(all)) {
      return versions
          .filter(version -> version.getFileName().toString().matches("\\d+"))
          .filter(version -> number(version) >= server.version())
          .map(version -> version.resolve("bin"))
          .findFirst();
    }
  }

  private static int number(Path version) {
    return Integer.parseInt(version.getFileName().toString());
  }

  private String[] settings(String url) {
    return new String[] {
      "--spring.datasource.url=" + url,
      "--spring.datasource.username=" + server.user(),
      "--spring.datasource.password=" + server.password()
    };
  }
}
