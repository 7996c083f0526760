package org.holewise.school.system;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.holewise.school.account.Audit;
import org.holewise.school.account.Person;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Copies of the embedded database, made while it is at work, in a folder beside it. */
@Repository
class Backups {

  private static final Pattern NAME = Pattern.compile("holewise-\\d{8}T\\d{9}Z\\.zip");

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssSSS'Z'").withZone(ZoneOffset.UTC);

  private static final String UNFINISHED = ".part";

  private final JdbcClient db;
  private final Path folder;
  private final Audit audit;
  private final Clock clock;

  Backups(JdbcClient db, @Value("${holewise.data}") Path data, Audit audit, Clock clock) {
    this.db = db;
    this.folder = data.toAbsolutePath().normalize().resolve("backups");
    this.audit = audit;
    this.clock = clock;
  }

  Path folder() {
    return folder;
  }

  /** Makes one; it is in the list once it is whole. One at a time. */
  synchronized Backup make(Person administrator) throws IOException {
    Path file = folder.resolve("holewise-" + TIME.format(clock.instant()) + ".zip");
    Path unfinished = folder.resolve(file.getFileName() + UNFINISHED);
    Files.createDirectories(folder);
    try {
      db.sql("backup to '" + unfinished.toString().replace("'", "''") + "'").update();
      Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (DataAccessException e) {
      throw new IOException("the database could not write " + unfinished, e);
    } finally {
      Files.deleteIfExists(unfinished);
    }
    audit.note(administrator, "backup.made", "installation", 1);
    return backup(file);
  }

  /** All of them, the latest first. */
  List<Backup> all() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (var files = Files.list(folder)) {
      return files
          .filter(file -> NAME.matcher(file.getFileName().toString()).matches())
          .map(Backups::backup)
          .sorted(Comparator.comparing(Backup::name).reversed())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of the list: no other name leads to a file. */
  Optional<Backup> named(String name) {
    return all().stream().filter(backup -> backup.name().equals(name)).findFirst();
  }

  private static Backup backup(Path file) {
    try {
      return new Backup(file, Files.getLastModifiedTime(file).toInstant(), Files.size(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
