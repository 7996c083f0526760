package org.holewise.school.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipInputStream;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.roster.ClassGroup;
import org.holewise.school.roster.Classes;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Backups of the embedded database: made, fetched and restored as the README says. */
class BackupsIT {

  private static final String PASSWORD = "violet kettle under seven ladders";

  @TempDir private Path folder;

  private Path data;
  private RunningSchool school;
  private Visitor ada;

  @BeforeEach
  void open() {
    data = folder.resolve("school's data");
    school = RunningSchool.plain(data);
    school.part(People.class).add("Ada", Role.ADMINISTRATOR, PASSWORD);
    ada = signedIn(school);
  }

  @AfterEach
  void close() {
    school.close();
  }

  @Test
  void areRestoredIntoANewFolderAsTheReadmeSays() throws IOException {
    var classes = school.part(Classes.class);
    classes.addStudent(classes.add("9b"), "Wren");
    assertThat(ada.opens("/backups").body()).contains("There is no backup yet");
    assertThat(Visitor.target(ada.sends("/backups", "/backups"))).isEqualTo("/backups");
    classes.add("made after the backup");
    String page = ada.opens("/backups").body();
    assertThat(page).contains(data.resolve("backups").toString().replace("'", "&#39;"));
    String link = page.replaceAll("(?s).*href=\"(/backups/[^\"]+)\".*", "$1");
    Path fresh = folder.resolve("restored");
    unzip(downloaded(link), fresh);
    try (var restored = RunningSchool.plain(fresh)) {
      assertThat(restored.part(Classes.class).all())
          .extracting(ClassGroup::name)
          .containsExactly("9b");
      assertThat(signedIn(restored).opens("/classes").body()).contains("9b");
    }
    assertThat(Files.readString(Path.of("README.md")))
        .contains("unzip", "--holewise.data=./data/restored");
  }

  @Test
  void areKeptWholeAndOneByOne() throws IOException {
    ada.sends("/backups", "/backups");
    ada.sends("/backups", "/backups");
    try (var files = Files.list(data.resolve("backups"))) {
      assertThat(files)
          .hasSize(2)
          .allSatisfy(
              file ->
                  assertThat(file.getFileName().toString())
                      .matches("holewise-\\d{8}T\\d{9}Z\\.zip"));
    }
    assertThat(ada.opens("/audit").body()).contains("Backed the data up");
  }

  @Test
  void thatCannotBeWrittenAreSaidNotToBeMade() throws IOException {
    Files.writeString(data.resolve("backups"), "a file where the folder should be");
    var answer = ada.sends("/backups", "/backups");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("No backup was made", "could not be written");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/backups/..%2Fholewise.mv.db",
        "/backups/../holewise.mv.db",
        "/backups/%2e%2e/holewise.mv.db",
        "/backups/..%5Cholewise.mv.db",
        "/backups/holewise.mv.db",
        "/backups/secret.txt",
        "/backups/holewise-20310304T090000000Z.zip"
      })
  void areAllThatCanBeFetched(String path) throws IOException {
    ada.sends("/backups", "/backups");
    Files.writeString(data.resolve("backups").resolve("secret.txt"), "secret");
    assertThat(Files.exists(data.resolve("holewise.mv.db"))).isTrue();
    assertThat(ada.opens(path).statusCode()).isIn(400, 404);
  }

  @Test
  void areNoneOfWhatIsInMemoryAlone() {
    String url = "--spring.datasource.url=jdbc:h2:mem:unkept";
    Path there = folder.resolve("in memory");
    try (var brief = RunningSchool.plain(there, url)) {
      brief.part(People.class).add("Ada", Role.ADMINISTRATOR, PASSWORD);
      var visitor = signedIn(brief);
      assertThat(visitor.opens("/backups").body())
          .contains("in the computer’s memory alone")
          .doesNotContain("Back up now");
      assertThat(Visitor.target(visitor.sends("/people", "/backups"))).isEqualTo("/backups");
      assertThat(there.resolve("backups")).doesNotExist();
    }
  }

  @Test
  void areForAdministrators() {
    school.part(People.class).add("Tom", Role.TEACHER, PASSWORD);
    var tom = new Visitor(school);
    tom.signsIn("Tom", PASSWORD);
    assertThat(tom.opens("/backups").statusCode()).isEqualTo(403);
    assertThat(tom.sends("/classes", "/backups").statusCode()).isEqualTo(403);
    assertThat(ada.sendsBare("/backups").statusCode()).isEqualTo(403);
    assertThat(Files.exists(data.resolve("backups"))).isFalse();
  }

  private InputStream downloaded(String link) {
    var call = HttpRequest.newBuilder(school.at(link)).build();
    var answer = ada.sendForBytes(call);
    assertThat(answer.headers().firstValue("Content-Type")).contains("application/zip");
    assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
        .startsWith("attachment; filename=\"holewise-");
    return new ByteArrayInputStream(answer.body());
  }

  private static void unzip(InputStream zip, Path into) throws IOException {
    Files.createDirectories(into);
    try (var files = new ZipInputStream(zip)) {
      for (var entry = files.getNextEntry(); entry != null; entry = files.getNextEntry()) {
        Files.copy(files, into.resolve(entry.getName()));
      }
    }
    assertThat(into.resolve("holewise.mv.db")).exists();
  }

  private static Visitor signedIn(RunningSchool school) {
    var visitor = new Visitor(school);
    HttpResponse<String> answer = visitor.signsIn("Ada", PASSWORD);
    assertThat(answer.statusCode()).isEqualTo(302);
    return visitor;
  }
}
